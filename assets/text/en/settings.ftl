# The settings.

settings-settings = Settings
settings-units = Units
settings-gauges = Gauges
settings-no-scale = no saturation scale
settings-colours = Colours
settings-paper = paper
settings-night = night
settings-wall = wall
settings-text = Text
settings-not-read = The settings cannot be read from { $file }: { $error }
settings-not-kept = The settings cannot be kept in { $file }: { $error }
settings-wrong = { $wrong }
    The usual settings are in force. The file stays as it is until you change one.
