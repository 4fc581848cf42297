//! What a mistake would have cost: plain sums with the scenario's prices.

use super::guard::touched;
use super::text;
use crate::fluid::refrigerant::Refrigerant;
use crate::kit::{Item, RowPrice};
use crate::marking::Course;
use crate::plant::{Line, Spot};
use crate::scenario::{Costs, Criterion, Rule};
use crate::text::Message;
use crate::units::{Mass, Time};
use crate::words::{Action, Finding, FindingKind, Where};

/// What something costs, in the scenario's money.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Price {
    /// So much is lost.
    Lost(f64),
    /// So much may be lost: it was put at risk.
    Risked(f64),
    /// It is not a matter of money.
    Priceless,
}

/// The price of an event of a kind and size, the size in the SI unit of the kind.
pub fn price(kind: FindingKind, size: f64, costs: &Costs) -> Price {
    let amount = |item| match item {
        Item::Refrigerant => size * costs.refrigerant,
        Item::Compressor => costs.compressor,
        Item::MicronGauge => costs.micron_gauge,
        Item::PumpOil => costs.pump_oil,
        Item::Drier(hours) => costs.drier + hours * costs.hour,
        Item::Hours(hours) => hours * costs.hour,
    };
    match kind.row().price {
        RowPrice::Priceless => Price::Priceless,
        RowPrice::Lost(item) => Price::Lost(amount(item)),
        RowPrice::Risked(item) => Price::Risked(amount(item)),
    }
}

/// Something that happened, with what it costs.
#[derive(Debug, Clone, PartialEq)]
pub struct Happening {
    /// When it began.
    pub tick: u64,
    /// What it was.
    pub kind: FindingKind,
    /// In the technician's words.
    pub text: Message,
    /// Why it matters.
    pub why: Message,
    /// What it costs.
    pub price: Price,
    /// What it does to the climate, as carbon dioxide: refrigerant in the air.
    pub carbon_dioxide: Option<Mass>,
}

/// What happened up to now that the person had a hand in, in the order in which it began.
///
/// What leaks from the unit as it was found is left out: to name it would give its place away.
/// Whoever comes back for one thing that was forgotten takes the others along, so only the first
/// of them is priced.
pub fn happenings(course: &Course, costs: &Costs, refrigerant: &Refrigerant) -> Vec<Happening> {
    let mut comes_back = false;
    let own = course.findings.iter().filter(|f| !is_as_found(f, course));
    own.map(|finding| {
        let mut price = price(finding.kind, finding.size, costs);
        if is_forgotten(finding.kind) && std::mem::replace(&mut comes_back, true) {
            price = Price::Lost(0.0);
        }
        Happening {
            tick: finding.tick,
            kind: finding.kind,
            text: finding.text(),
            why: text::consequence(finding.kind),
            price,
            carbon_dioxide: is_in_the_air(finding.kind)
                .then(|| Mass::from_kilograms(finding.size * refrigerant.gwp())),
        }
    })
    .collect()
}

/// What all of it has cost for certain, with the hours over the rubric's time at the price of work.
pub fn lost(happenings: &[Happening], rubric: &[Criterion], spent: Time, costs: &Costs) -> f64 {
    let things: f64 = happenings
        .iter()
        .map(|happening| match happening.price {
            Price::Lost(amount) => amount,
            Price::Risked(_) | Price::Priceless => 0.0,
        })
        .sum();
    let limits = rubric.iter().filter_map(|criterion| match criterion.rule {
        Rule::InTime(limit) => Some(limit.seconds()),
        _ => None,
    });
    let limit = limits.fold(f64::INFINITY, f64::min);
    let hours_over = ((spent.seconds() - limit) / 3600.0).max(0.0);
    things + hours_over * costs.hour
}

const fn is_forgotten(kind: FindingKind) -> bool {
    matches!(
        kind,
        FindingKind::JointLeftLoose
            | FindingKind::CapLeftOff
            | FindingKind::KitLeftOn
            | FindingKind::ValveLeftShut
    )
}

fn is_in_the_air(kind: FindingKind) -> bool {
    kind.row().price == RowPrice::Lost(Item::Refrigerant)
}

/// Whether this went out, or came in, by a spot that nobody has touched.
fn is_as_found(finding: &Finding, course: &Course) -> bool {
    let by_itself = matches!(
        finding.kind,
        FindingKind::Released | FindingKind::AirDrawnIn
    );
    by_itself && matches!(finding.at, Where::Spot(spot) if !is_opened_up(spot, course))
}

/// Whether somebody has opened what holds a spot shut: its joint, its cap.
fn is_opened_up(spot: Spot, course: &Course) -> bool {
    let did = |so: &dyn Fn(&Action) -> bool| {
        let actions = course.moments.iter().filter_map(|m| m.action.as_ref());
        actions.into_iter().any(so)
    };
    let takes_cap_off = |line: Line, action: &Action| match *action {
        Action::PortCap { line: l, on } => !on && l == line && spot == Spot::Port(line),
        Action::StemCap { line: l, on } => !on && l == line && spot == Spot::Stem(line),
        _ => false,
    };
    match spot {
        Spot::Joint(joint) => touched(course, joint),
        Spot::Port(line) | Spot::Stem(line) => did(&|action| takes_cap_off(line, action)),
        Spot::IndoorCoil | Spot::OutdoorCoil => false,
    }
}
