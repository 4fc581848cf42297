# Cautions where work can hurt: at the start, and at the thing itself.

caution-caution = Caution. { $text }
caution-practice-only = This is practice only. It makes nobody a licensed technician: local codes, the nameplate and licensed practice decide.
caution-pressure = Pressure: a circuit or a cylinder that lets go can injure. Eyes and hands first.
caution-electricity = Electricity: lock out, discharge the capacitor, prove that nothing is live.
caution-cold = Cold: liquid refrigerant burns the skin and the eyes.
caution-oxygen = Never oxygen, never shop air: with oil under pressure they explode. Dry nitrogen only.
caution-regulator = Never nitrogen without its regulator: a full cylinder bursts a coil.
caution-heat = Heat: the discharge line and a running compressor burn.
caution-fire = Fire: some refrigerants burn. Ventilate, keep sparks and flames away, use rated tools.
caution-at-disconnect = Lock out and prove dead before hands go in.
caution-at-compressor = Live terminals, a charged capacitor, a hot discharge line.
caution-at-joint = Prove 0 psig first. Loosen slowly, away from the face.
caution-at-hose = Liquid at a hose end burns: glasses and gloves.
caution-at-nitrogen = Regulator on and backed off first. Never oxygen in its place.
caution-at-cylinder = Pressure, and cold burns from liquid.
caution-burns = This refrigerant burns: ventilate, no flame or spark near, rated tools. Purge with nitrogen before you open or braze.
