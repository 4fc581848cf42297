//! How the unit stands, for those who may see the truth.

/// How the unit stood in the last tick.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Operating {
    /// Electric power of the compressor, W.
    pub compressor_power: f64,
    /// Electric power of the unit with its fans, W.
    pub power: f64,
    /// Flow of the compressor, kg/s.
    pub compressor_flow: f64,
    /// Temperature at the outlet of the indoor coil, K.
    pub coil_outlet_temperature: f64,
    /// Superheat there, K.
    pub coil_superheat: f64,
    /// Share of the indoor coil that is wetted.
    pub wetted: f64,
    /// Quality at its outlet; below one it floods back.
    pub coil_outlet_quality: f64,
    /// Heat taken from the indoor air, W; the blower's own heat is not taken off.
    pub capacity: f64,
    /// Of that the sensible part, W.
    pub sensible: f64,
    /// And the latent part, W.
    pub latent: f64,
    /// Water that the indoor air leaves on the coil, kg/s.
    pub water: f64,
    /// The heat taken less what the blower gives, W.
    pub net_capacity: f64,
    /// Temperature of the air that leaves the outdoor coil, K.
    pub outdoor_air_out: f64,
    /// Air that passes the indoor coil, kg/s.
    pub indoor_air: f64,
    /// Temperature, K, of the air that leaves the indoor coil.
    pub indoor_air_out: f64,
    /// Its humidity ratio.
    pub indoor_humidity_out: f64,
    /// Share of the outdoor coil that holds liquid.
    pub liquid_zone: f64,
    /// Temperature of what leaves the outdoor coil, K.
    pub liquid_temperature: f64,
    /// Flow of refrigerant through the metering device, kg/s.
    pub metering_flow: f64,
    /// Share of its throat that ice shuts.
    pub throat_ice: f64,
    /// How far an expansion valve is open; 1 for an orifice.
    pub valve_lift: f64,
    /// Liquid that comes back to the compressor's shell, kg/s; a start after a rest brings some.
    pub liquid_return: f64,
    /// Liquid that the compressor draws out of its shell into the cylinders, kg/s: a slug.
    pub liquid_pumped: f64,
    /// Refrigerant dissolved in the oil, kg.
    pub dissolved_in_oil: f64,
    /// Level of oil and liquid in the shell, share of its volume.
    pub shell_level: f64,
    /// Temperature of the indoor coil's fins, K.
    pub fin_temperature: f64,
    /// Frost on them, kg.
    pub frost: f64,
}
