"""Every unit that the project reads, converted to SI by pint.

Independent of the project: the names below are pint's own (its definitions file cites NIST SP 811 and
CODATA). Writes pint.csv beside this file: dimension, unit as the project writes it, one of it in SI.
Units of a slope or an angle given as the other are by their definition, with Python's math module.

    pip install pint==0.25.3
    python pint_units.py
"""
import math
import pathlib
import pint

u = pint.UnitRegistry()
G = u.standard_gravity

SI = {"Length": "m", "Area": "m**2", "Volume": "m**3", "Mass": "kg", "Angle": "rad", "Slope": "dimensionless",
      "Ratio": "dimensionless", "Force": "N", "Moment": "N*m", "Pressure": "Pa", "Speed": "m/s", "Voltage": "V",
      "Density": "kg/m**3", "Stiffness": "N/m", "UnitWeight": "N/m**3", "SecondMoment": "m**4"}

UNITS = {
    "Length": {"m": "m", "mm": "mm", "cm": "cm", "km": "km", "ft": "foot", "in": "inch", "yd": "yard", "mi": "mile",
               "ftUS": "survey_foot"},
    "Area": {"m2": "m**2", "mm2": "mm**2", "cm2": "cm**2", "ft2": "foot**2", "in2": "inch**2", "yd2": "yard**2"},
    "Volume": {"m3": "m**3", "L": "liter", "cm3": "cm**3", "ft3": "foot**3", "yd3": "yard**3", "US gal": "gallon"},
    "Mass": {"kg": "kg", "t": "metric_ton", "g": "g", "lb": "pound", "oz": "ounce", "short ton": "short_ton",
             "long ton": "long_ton"},
    "Angle": {"°": "degree", "rad": "rad", "mrad": "mrad"},
    "Slope": {"%": "percent", "‰": "permille"},
    "Ratio": {"%": "percent", "‰": "permille"},
    "Force": {"N": "N", "kN": "kN", "MN": "MN", "lbf": "force_pound", "kip": "kip", "kgf": "force_kilogram",
              "tf": "force_metric_ton"},
    "Moment": {"N·m": "N*m", "kN·m": "kN*m", "lbf·ft": "force_pound*foot", "kip·ft": "kip*foot"},
    "Pressure": {"Pa": "Pa", "kPa": "kPa", "MPa": "MPa", "bar": "bar", "psi": "psi", "lbf/ft2": "force_pound/foot**2",
                 "ksf": "kip/foot**2", "ksi": "kip/inch**2", "kgf/m2": "force_kilogram/m**2",
                 "kgf/cm2": "force_kilogram/cm**2", "tf/m2": "force_metric_ton/m**2"},
    "Speed": {"m/s": "m/s", "km/h": "km/hour", "mph": "mile/hour", "ft/s": "foot/s", "kn": "knot"},
    "Voltage": {"V": "V", "kV": "kV"},
    "Density": {"kg/m3": "kg/m**3", "t/m3": "metric_ton/m**3", "lb/ft3": "pound/foot**3", "lb/yd3": "pound/yard**3"},
    "Stiffness": {"kN/m": "kN/m", "N/m": "N/m", "kN/mm": "kN/mm", "lbf/ft": "force_pound/foot",
                  "lbf/in": "force_pound/inch"},
    "UnitWeight": {"kN/m3": "kN/m**3", "N/m3": "N/m**3", "lbf/ft3": "force_pound/foot**3"},
    "SecondMoment": {"m4": "m**4", "cm4": "cm**4", "mm4": "mm**4", "in4": "inch**4"},
}

rows = ["# made by pint_units.py with pint %s" % pint.__version__, "dimension,unit,si"]
for dimension, units in UNITS.items():
    for name, pints in units.items():
        rows.append("%s,%s,%r" % (dimension, name, float(u.Quantity(1.0, pints).to(SI[dimension]).magnitude)))
# Weights by volume stand for densities under standard gravity.
for name, pints in {"kN/m3": "kN/m**3", "N/m3": "N/m**3"}.items():
    rows.append("Density,%s,%r" % (name, float((u.Quantity(1.0, pints) / G).to("kg/m**3").magnitude)))
for name, value in {"°": math.tan(math.radians(1.0)), "rad": math.tan(1.0)}.items():
    rows.append("Slope,%s,%r" % (name, value))
rows.append("Angle,%%,%r" % math.atan(0.01))

pathlib.Path(__file__).with_name("pint.csv").write_text("\n".join(rows) + "\n")
