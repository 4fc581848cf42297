//! Refrigerants: saturation curves and vapour from tables made once out of `CoolProp`.
//!
//! A table has one row every 0.25 K and is read by straight lines between rows, so every slope is
//! the exact slope of what is read. The vapour is a virial of three terms that is exact on the
//! dew line and exactly an ideal gas as its density goes to zero, so one formula serves from the
//! discharge line down to a deep vacuum:
//!
//! ```text
//! p = ρ R T (1 + B ρ + C ρ²)        u = u0 - R T² (B' ρ + C' ρ² / 2)
//! ```
//!
//! Energies and enthalpies have one reference: 200 kJ/kg for bubbling liquid at 0 °C. Where the
//! values come from, and how near they are: `assets/refrigerants/README.md`.

use std::sync::OnceLock;

use super::facts::{Facts, InOil, SafetyClass, Viscosity, Zones};
use super::within;
use crate::units::{GaugePressure, Pressure, Temperature};

/// How many columns a table has.
const COLUMNS: usize = 15;

/// Saturation and virial values at one temperature, or their slopes per kelvin.
///
/// For a blend the bubble and the dew line differ: `p`, `rho_l`, `h_l`, `u_l` belong to the
/// bubble line, `p_dew`, `rho_g`, `h_g`, `u_g` to the dew line at the same temperature.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Curves {
    /// Bubble pressure, Pa.
    pub p: f64,
    /// Dew pressure, Pa.
    pub p_dew: f64,
    /// Density of the saturated liquid, kg/m³.
    pub rho_l: f64,
    /// Density of the saturated vapour, kg/m³.
    pub rho_g: f64,
    /// Enthalpy of the saturated liquid, J/kg.
    pub h_l: f64,
    /// Enthalpy of the saturated vapour, J/kg.
    pub h_g: f64,
    /// Internal energy of the saturated liquid, J/kg.
    pub u_l: f64,
    /// Internal energy of the saturated vapour, J/kg.
    pub u_g: f64,
    /// Virial coefficient B, m³/kg.
    pub b: f64,
    /// Virial coefficient C, m⁶/kg².
    pub c: f64,
    /// B' of the energy, m³/(kg K): near the slope of B, fitted to the energy.
    pub db: f64,
    /// C' of the energy, m⁶/(kg² K): near the slope of C, fitted to the energy.
    pub dc: f64,
    /// Internal energy of the vapour at zero density, J/kg.
    pub u0: f64,
    /// Rise of the liquid's enthalpy with pressure above the bubble line, J/(kg Pa).
    pub dh_l: f64,
    /// Compressibility of the liquid above the bubble line, 1/Pa.
    pub k_l: f64,
}

impl Curves {
    /// From a row, in the order of the columns.
    #[inline]
    fn from_row(row: [f64; COLUMNS]) -> Self {
        let [
            p,
            p_dew,
            rho_l,
            rho_g,
            h_l,
            h_g,
            u_l,
            u_g,
            b,
            c,
            db,
            dc,
            u0,
            dh_l,
            k_l,
        ] = row;
        Self {
            p,
            p_dew,
            rho_l,
            rho_g,
            h_l,
            h_g,
            u_l,
            u_g,
            b,
            c,
            db,
            dc,
            u0,
            dh_l,
            k_l,
        }
    }
}

/// One refrigerant. Get it by [`Refrigerant::named`].
#[derive(Debug)]
pub struct Refrigerant {
    facts: Facts,
    molar_mass: f64,
    gas_constant: f64,
    critical_temperature: f64,
    critical_pressure: f64,
    coldest: f64,
    hottest: f64,
    /// Rows per kelvin.
    per_kelvin: f64,
    /// The last place, in rows, at which a cell still begins.
    top: f64,
    rows: Vec<[f64; COLUMNS]>,
    bubble: Vec<f64>,
    dew: Vec<f64>,
}

/// The facts and the tables inside the program, by the stem of their files.
macro_rules! refrigerants {
    ($($stem:literal),+ $(,)?) => {
        [$((
            include_str!(concat!("../../assets/refrigerants/", $stem, ".ron")),
            include_bytes!(concat!("../../assets/refrigerants/", $stem, ".table")),
        )),+]
    };
}

/// Every refrigerant, in the order in which they are offered.
static FILES: &[(&str, &[u8])] = &refrigerants![
    "r22", "r410a", "r32", "r454b", "r134a", "r407c", "r404a", "r290",
];

impl Refrigerant {
    /// Every refrigerant.
    pub fn all() -> &'static [Self] {
        static ALL: OnceLock<Vec<Refrigerant>> = OnceLock::new();
        ALL.get_or_init(|| {
            let read = FILES
                .iter()
                .filter_map(|(facts, table)| Self::from_table(Facts::read(facts)?, table));
            read.collect()
        })
    }

    /// The names of all refrigerants, for a hint.
    pub fn names() -> Vec<&'static str> {
        Self::all().iter().map(Self::name).collect()
    }

    /// The refrigerant of this name, such as `R-22`.
    pub fn named(name: &str) -> Option<&'static Self> {
        let all = Self::all().iter();
        all.into_iter()
            .find(|refrigerant| refrigerant.name() == name)
    }

    /// Reads a table: head lines, a line of dashes, rows of little-endian f64.
    fn from_table(facts: Facts, bytes: &[u8]) -> Option<Self> {
        const END: &[u8] = b"\n---\n";
        let end = bytes.windows(END.len()).position(|window| window == END)?;
        let head = std::str::from_utf8(&bytes[..end]).ok()?;
        let text = |key: &str| {
            head.lines()
                .find_map(|line| line.strip_prefix(key)?.strip_prefix(": "))
        };
        let number = |key: &str| text(key)?.parse::<f64>().ok();
        let mut values = bytes[end + END.len()..].chunks_exact(8).map(|chunk| {
            let mut value = [0; 8];
            value.copy_from_slice(chunk);
            f64::from_le_bytes(value)
        });
        let count = number("rows")? as usize;
        let mut rows = Vec::with_capacity(count);
        for _ in 0..count {
            let mut row = [0.0; COLUMNS];
            for cell in &mut row {
                *cell = values.next()?;
            }
            rows.push(row);
        }
        let is_whole = values.next().is_none() && count >= 2 && text("name")? == facts.name;
        let (coldest, step) = (number("coldest")?, number("step")?);
        is_whole.then_some(())?;
        Some(Self {
            facts,
            molar_mass: number("molar mass")?,
            gas_constant: number("gas constant")?,
            critical_temperature: number("critical temperature")?,
            critical_pressure: number("critical pressure")?,
            coldest,
            hottest: coldest + step * number("last saturation row")?,
            per_kelvin: 1.0 / step,
            top: count as f64 - 1.001,
            bubble: rows.iter().map(|row| row[0]).collect(),
            dew: rows.iter().map(|row| row[1]).collect(),
            rows,
        })
    }

    /// The trade name, `R-22`.
    pub fn name(&self) -> &str {
        &self.facts.name
    }

    /// Molar mass, kg/mol.
    pub fn molar_mass(&self) -> f64 {
        self.molar_mass
    }

    /// Gas constant of the vapour, J/(kg K).
    pub fn gas_constant(&self) -> f64 {
        self.gas_constant
    }

    /// Critical temperature, K.
    pub fn critical_temperature(&self) -> f64 {
        self.critical_temperature
    }

    /// Critical pressure, Pa.
    pub fn critical_pressure(&self) -> f64 {
        self.critical_pressure
    }

    /// Temperature of the last saturation row, K: 4.75 K under the critical one, R-454B 20 K.
    ///
    /// Above it there is no liquid: the vapour goes on, the pressures rise in a straight line and
    /// the other saturation columns stay as they are, which keeps a search on its feet.
    pub fn hottest(&self) -> f64 {
        self.hottest
    }

    /// Temperature of the first row, K. Below it the first row holds.
    pub fn coldest(&self) -> f64 {
        self.coldest
    }

    /// Global warming potential over 100 years, kg of CO₂ per kg.
    pub const fn gwp(&self) -> f64 {
        self.facts.gwp
    }

    /// How it may harm and burn.
    pub const fn safety_class(&self) -> SafetyClass {
        self.facts.safety
    }

    /// Whether it burns at all.
    pub const fn is_flammable(&self) -> bool {
        self.facts.safety.is_flammable()
    }

    /// The lower flammability limit, kg of refrigerant per m³ of air; `None` if it does not burn.
    pub const fn flammable_from(&self) -> Option<f64> {
        self.facts.burns_from
    }

    /// How much water its liquid dissolves at `t`, K. ppm by mass.
    pub fn dissolves_water(&self, t: f64) -> f64 {
        self.facts.dissolves(t)
    }

    /// Viscosity of liquid and vapour.
    #[inline]
    pub const fn viscosity(&self) -> Viscosity {
        self.facts.viscosity
    }

    /// Specific heats in the zones of the coils.
    #[inline]
    pub const fn zones(&self) -> Zones {
        self.facts.zones
    }

    /// What oil holds of it.
    #[inline]
    pub const fn in_oil(&self) -> InOil {
        self.facts.oil
    }

    /// The row at or below `t`, and how far `t` is towards the next, 0 to 1.
    #[inline]
    fn cell(&self, t: f64) -> (usize, f64) {
        let place = within((t - self.coldest) * self.per_kelvin, 0.0, self.top);
        let row = place as usize;
        (row, place - row as f64)
    }

    /// All curves at `t`, K.
    #[inline]
    pub fn at(&self, t: f64) -> Curves {
        let (row, part) = self.cell(t);
        let (low, high) = (&self.rows[row], &self.rows[row + 1]);
        Curves::from_row(std::array::from_fn(|k| low[k] + part * (high[k] - low[k])))
    }

    /// The slopes of all curves at `t`, per kelvin.
    #[inline]
    pub fn slopes(&self, t: f64) -> Curves {
        let (row, _) = self.cell(t);
        let (low, high) = (&self.rows[row], &self.rows[row + 1]);
        Curves::from_row(std::array::from_fn(|k| {
            (high[k] - low[k]) * self.per_kelvin
        }))
    }

    /// All curves and their slopes at `t`, K.
    #[expect(
        clippy::inline_always,
        reason = "at each place only a few of the thirty columns are used; the rest then falls away"
    )]
    #[inline(always)]
    pub fn at_with_slopes(&self, t: f64) -> (Curves, Curves) {
        let (row, part) = self.cell(t);
        let (low, high) = (&self.rows[row], &self.rows[row + 1]);
        let rise: [f64; COLUMNS] = std::array::from_fn(|k| high[k] - low[k]);
        (
            Curves::from_row(std::array::from_fn(|k| low[k] + part * rise[k])),
            Curves::from_row(rise.map(|rise| rise * self.per_kelvin)),
        )
    }

    /// Pressure at which liquid of temperature `t`, K, begins to boil, Pa.
    #[inline]
    pub fn bubble_pressure(&self, t: f64) -> f64 {
        let (row, part) = self.cell(t);
        self.bubble[row] + part * (self.bubble[row + 1] - self.bubble[row])
    }

    /// Pressure at which vapour of temperature `t`, K, begins to condense, Pa.
    #[inline]
    pub fn dew_pressure(&self, t: f64) -> f64 {
        let (row, part) = self.cell(t);
        self.dew[row] + part * (self.dew[row + 1] - self.dew[row])
    }

    /// Temperature at which liquid begins to boil at `p`, Pa: the exact inverse of
    /// [`Self::bubble_pressure`] within the table, the nearer end outside it. K.
    #[inline]
    pub fn bubble_temperature(&self, p: f64) -> f64 {
        self.temperature_on(&self.bubble, p)
    }

    /// Temperature at which vapour begins to condense at `p`, Pa: the exact inverse of
    /// [`Self::dew_pressure`] within the table, the nearer end outside it. K.
    #[inline]
    pub fn dew_temperature(&self, p: f64) -> f64 {
        self.temperature_on(&self.dew, p)
    }

    /// Where a rising column of pressures reaches `p`.
    #[inline]
    fn temperature_on(&self, column: &[f64], p: f64) -> f64 {
        let above = column
            .partition_point(|&row| row <= p)
            .clamp(1, column.len() - 1);
        let (low, high) = (column[above - 1], column[above]);
        let part = within((p - low) / (high - low), 0.0, 1.0);
        self.coldest + ((above - 1) as f64 + part) / self.per_kelvin
    }

    /// Pressure of the vapour at `t`, K, and density `rho`, kg/m³. Pa.
    #[inline]
    pub fn vapour_pressure_at(&self, t: f64, rho: f64) -> f64 {
        let curves = self.at(t);
        rho * self.gas_constant * t * (1.0 + curves.b * rho + curves.c * rho * rho)
    }

    /// Internal energy of the vapour, J/kg, from the curves at its temperature `t`, K, and its
    /// density `rho`, kg/m³.
    #[inline]
    pub fn vapour_energy(&self, curves: &Curves, t: f64, rho: f64) -> f64 {
        curves.u0 - self.gas_constant * t * t * (curves.db * rho + 0.5 * curves.dc * rho * rho)
    }

    /// Density of the vapour at `p`, Pa, and `t`, K. kg/m³; zero in an absolute vacuum.
    #[inline]
    pub fn vapour_density(&self, p: f64, t: f64) -> f64 {
        self.density_in(&self.at(t), p, t)
    }

    /// Density of the vapour at `p`, `t` from the curves at `t`, by Newton from an ideal gas.
    fn density_in(&self, curves: &Curves, p: f64, t: f64) -> f64 {
        let rt = self.gas_constant * within(t, self.coldest, 1e4);
        let &Curves { b, c, .. } = curves;
        let p = within(p, 0.0, 1e9);
        let mut rho = p / rt;
        for _ in 0..16 {
            let excess = rho * rt * (1.0 + b * rho + c * rho * rho) - p;
            // Beyond the dew line the isotherm flattens: there the floor keeps the search bounded.
            let slope = (rt * (1.0 + 2.0 * b * rho + 3.0 * c * rho * rho)).max(0.15 * rt);
            let step = excess / slope;
            // A vapour is never denser than its liquid.
            rho = within(rho - step, 0.0, curves.rho_l);
            if step.abs() <= 1e-10 * rho {
                break;
            }
        }
        rho
    }

    /// Enthalpy of the vapour at `p`, Pa, and `t`, K. J/kg.
    #[inline]
    pub fn vapour_enthalpy(&self, p: f64, t: f64) -> f64 {
        let curves = self.at(t);
        let rho = self.density_in(&curves, p, t);
        self.enthalpy_in(&curves, t, rho)
    }

    /// Enthalpy of the vapour from the curves at `t` and its density; finite at zero density.
    #[inline]
    fn enthalpy_in(&self, curves: &Curves, t: f64, rho: f64) -> f64 {
        let flow_work = self.gas_constant * t * (1.0 + curves.b * rho + curves.c * rho * rho);
        self.vapour_energy(curves, t, rho) + flow_work
    }

    /// Temperature of vapour at `p`, Pa, that has the enthalpy `h`, J/kg; within the table. K.
    ///
    /// `guess` starts the search, K; near the answer it takes two or three rounds.
    pub fn vapour_temperature_from_enthalpy(&self, p: f64, h: f64, guess: f64) -> f64 {
        let end = self.coldest + self.top / self.per_kelvin;
        let mut t = within(guess, self.coldest, end);
        for _ in 0..24 {
            let (curves, slopes) = self.at_with_slopes(t);
            let rho = self.density_in(&curves, p, t);
            let here = self.enthalpy_in(&curves, t, rho);
            // A vapour's specific heat is above 400 J/(kg K); the floor keeps the step bounded.
            let slope = self.specific_heat_in(&curves, &slopes, t, rho).max(400.0);
            let step = ((h - here) / slope).clamp(-30.0, 30.0);
            t = within(t + step, self.coldest, end);
            if step.abs() < 1e-6 {
                break;
            }
        }
        t
    }

    /// Specific heat of the vapour at constant pressure, J/(kg K): the exact slope of
    /// [`Self::vapour_enthalpy`], from the curves and slopes at `t` and the density.
    fn specific_heat_in(&self, curves: &Curves, slopes: &Curves, t: f64, rho: f64) -> f64 {
        let r = self.gas_constant;
        let &Curves { b, c, db, dc, .. } = curves;
        let z = 1.0 + b * rho + c * rho * rho;
        let z_slope = slopes.b * rho + slopes.c * rho * rho;
        let h_by_t = slopes.u0
            - 2.0 * r * t * (db * rho + 0.5 * dc * rho * rho)
            - r * t * t * (slopes.db * rho + 0.5 * slopes.dc * rho * rho)
            + r * (z + t * z_slope);
        let h_by_rho = r * t * (b + 2.0 * c * rho) - r * t * t * (db + dc * rho);
        let p_by_t = rho * r * (z + t * z_slope);
        let p_by_rho = (r * t * (1.0 + 2.0 * b * rho + 3.0 * c * rho * rho)).max(0.15 * r * t);
        h_by_t - h_by_rho * p_by_t / p_by_rho
    }

    /// Specific heat of the vapour at constant pressure at `p`, Pa, and `t`, K. J/(kg K).
    pub fn vapour_specific_heat(&self, p: f64, t: f64) -> f64 {
        let (curves, slopes) = self.at_with_slopes(t);
        self.specific_heat_in(&curves, &slopes, t, self.density_in(&curves, p, t))
    }

    /// Enthalpy of liquid at `t`, K, under `p`, Pa, at or above its bubble pressure. J/kg.
    #[inline]
    pub fn liquid_enthalpy(&self, t: f64, p: f64) -> f64 {
        let curves = self.at(t);
        curves.h_l + curves.dh_l * (p - curves.p)
    }

    /// Density of liquid at `t`, K, under `p`, Pa, at or above its bubble pressure. kg/m³.
    #[inline]
    pub fn liquid_density(&self, t: f64, p: f64) -> f64 {
        let curves = self.at(t);
        curves.rho_l * (1.0 + curves.k_l * (p - curves.p))
    }

    /// The bubble and the dew temperature at a gauge pressure: the scale of a manifold gauge.
    pub fn saturation(&self, pressure: GaugePressure) -> (Temperature, Temperature) {
        let p = pressure.absolute().pascals();
        (
            Temperature::from_kelvin(self.bubble_temperature(p)),
            Temperature::from_kelvin(self.dew_temperature(p)),
        )
    }

    /// The bubble and the dew pressure at a temperature: the card of pressures and temperatures.
    pub fn pressure(&self, temperature: Temperature) -> (GaugePressure, GaugePressure) {
        let t = temperature.kelvin();
        (
            Pressure::from_pascals(self.bubble_pressure(t)).gauge(),
            Pressure::from_pascals(self.dew_pressure(t)).gauge(),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_file_inside_the_program_is_read() {
        assert_eq!(Refrigerant::all().len(), FILES.len());
        for refrigerant in Refrigerant::all() {
            assert!(refrigerant.hottest() < refrigerant.critical_temperature());
            assert!(Refrigerant::named(refrigerant.name()).is_some());
        }
        assert!(Refrigerant::named("R-0").is_none());
    }

    #[test]
    fn a_table_that_is_cut_short_is_refused() {
        let (text, bytes) = FILES[0];
        let facts = || Facts::read(text).expect("the facts of the first");
        assert!(Refrigerant::from_table(facts(), bytes).is_some());
        assert!(Refrigerant::from_table(facts(), &bytes[..bytes.len() - 8]).is_none());
        assert!(Refrigerant::from_table(facts(), b"nothing").is_none());
    }

    #[test]
    fn facts_that_contradict_themselves_are_refused() {
        let text = FILES[2].0;
        for (a, b) in [
            ("safety: A2L", "safety: A1"),
            ("vapour: 1.27e-5", "vapour: 0"),
            ("(0, 616)", "(-50, 616)"),
            ("version: 1", "version: 2"),
        ] {
            assert!(text.contains(a), "{a}");
            assert!(Facts::read(&text.replace(a, b)).is_none(), "{b}");
        }
    }
}
