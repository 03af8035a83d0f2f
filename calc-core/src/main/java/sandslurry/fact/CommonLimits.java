package sandslurry.fact;

import sandslurry.units.Measure;

/** Limits of fields that several parts of a design have. */
public final class CommonLimits {
  /** A share of a whole. */
  public static final Type<Double> SHARE = Type.quantity(Measure.FRACTION, "0 %", "100 %");

  /** A share that is more than nothing. */
  public static final Type<Double> POSITIVE_SHARE = Type.quantity(Measure.FRACTION, "1 %", "100 %");

  /** A share that leaves a tenth at least. */
  public static final Type<Double> MOST_SHARE = Type.quantity(Measure.FRACTION, "0 %", "90 %");

  /** Temperature of a liquid. */
  public static final Type<Double> TEMPERATURE =
      Type.quantity(Measure.TEMPERATURE, "0.1 degC", "45 degC");

  /** The most total solids of a liquor whose viscosity follows its solids. */
  public static final String MOST_SOLIDS = "13 %";

  /** Total solids of manure, by mass. */
  public static final Type<Double> TOTAL_SOLIDS =
      Type.quantity(Measure.FRACTION, "0 %", MOST_SOLIDS);

  /** Volume of sand over volume of mixture. */
  public static final Type<Double> VOLUME_FRACTION = Type.quantity(Measure.FRACTION, "0 %", "40 %");

  /** Flow rate of a line. */
  public static final Type<Double> FLOW = Type.quantity(Measure.FLOW, "0.05 L/s", "2000 L/s");

  /** Level of a liquid surface above the start of the line. */
  public static final Type<Double> LEVEL = Type.quantity(Measure.LENGTH, "-30 m", "100 m");

  /** Level above the datum of a plant, which may be that of a survey. */
  public static final Type<Double> SITE_LEVEL = Type.quantity(Measure.LENGTH, "-500 m", "5000 m");

  /** Inner diameter of a pipe. */
  public static final Type<Double> BORE = Type.quantity(Measure.LENGTH, "20 mm", "1200 mm");

  /** Pressure rating of a pipe. */
  public static final Type<Double> RATING = Type.quantity(Measure.PRESSURE, "10 kPa", "50 MPa");

  /** Slope of a channel, fall over length. */
  public static final Type<Double> SLOPE = Type.quantity(Measure.SLOPE, "0 %", "10 %");

  /** Manning roughness of a channel. */
  public static final Type<Double> MANNING = Type.quantity(Measure.NUMBER, "0.008", "0.06");

  /** Running time a day. */
  public static final Type<Double> RUNNING_TIME = Type.quantity(Measure.TIME, "1 min", "24 h");

  /** Settling velocity of coated grains over that of clean ones. */
  public static final Type<Double> COATING = Type.quantity(Measure.FRACTION, "0.3", "1");

  /** Share of its head that a worn pump has lost. */
  public static final Type<Double> WORN = Type.quantity(Measure.FRACTION, "0 %", "50 %");

  /** Flow rate of a point of a pump curve. */
  public static final Type<Double> CURVE_FLOW = Type.quantity(Measure.FLOW, "0 L/s", "2000 L/s");

  /** Head of a point of a pump curve. */
  public static final Type<Double> CURVE_HEAD = Type.quantity(Measure.LENGTH, "0 m", "500 m");

  /** Length or width of a unit or a pond. */
  public static final Type<Double> SIDE = Type.quantity(Measure.LENGTH, "0.2 m", "1000 m");

  /** Depth of a unit or a pond. */
  public static final Type<Double> DEPTH = Type.quantity(Measure.LENGTH, "0.01 m", "20 m");

  /** Mean flow rate of water in a plant. */
  public static final Type<Double> WATER = Type.quantity(Measure.FLOW, "0 m3/d", "20000 m3/d");

  /** Volume of a pit. */
  public static final Type<Double> PIT = Type.quantity(Measure.VOLUME, "0.1 m3", "200000 m3");

  /** Volume of what a pit or storage holds. */
  public static final Type<Double> CONTENTS = Type.quantity(Measure.VOLUME, "0 m3", "200000 m3");

  /** Time for which sand waits, in a lane or a stack. */
  public static final Type<Double> WAIT = Type.quantity(Measure.TIME, "0 d", "365 d");

  /** Time of the day. */
  public static final Type<Double> CLOCK = Type.quantity(Measure.TIME, "0 h", "24 h");

  private CommonLimits() {}
}
