package sandslurry.fact;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** Limits of fields that several parts of a design have. */
public final class CommonLimits {
  /** A share of a whole. */
  public static final Limits<Dimensionless> SHARE = Limits.of(Measure.FRACTION, "0 %", "100 %");

  /** A share that is more than nothing. */
  public static final Limits<Dimensionless> POSITIVE_SHARE =
      Limits.of(Measure.FRACTION, "1 %", "100 %");

  /** A share that leaves a tenth at least. */
  public static final Limits<Dimensionless> MOST_SHARE = Limits.of(Measure.FRACTION, "0 %", "90 %");

  /** Temperature of a liquid. */
  public static final Limits<Temperature> TEMPERATURE =
      Limits.of(Measure.TEMPERATURE, "0.1 degC", "45 degC");

  /** Total solids of manure, by mass. */
  public static final Limits<Dimensionless> TOTAL_SOLIDS =
      Limits.of(Measure.FRACTION, "0 %", "13 %");

  /** Volume of sand over volume of mixture. */
  public static final Limits<Dimensionless> VOLUME_FRACTION =
      Limits.of(Measure.FRACTION, "0 %", "40 %");

  /** Flow rate of a line. */
  public static final Limits<VolumetricFlowRate> FLOW =
      Limits.of(Measure.FLOW, "0.05 L/s", "2000 L/s");

  /** Level of a liquid surface above the start of the line. */
  public static final Limits<Length> LEVEL = Limits.of(Measure.LENGTH, "-30 m", "100 m");

  /** Level above the datum of a plant, which may be that of a survey. */
  public static final Limits<Length> SITE_LEVEL = Limits.of(Measure.LENGTH, "-500 m", "5000 m");

  /** Inner diameter of a pipe. */
  public static final Limits<Length> BORE = Limits.of(Measure.LENGTH, "20 mm", "1200 mm");

  /** Pressure rating of a pipe. */
  public static final Limits<Pressure> RATING = Limits.of(Measure.PRESSURE, "10 kPa", "50 MPa");

  /** Slope of a channel, fall over length. */
  public static final Limits<Dimensionless> SLOPE = Limits.of(Measure.FRACTION, "0 %", "10 %");

  /** Manning roughness of a channel. */
  public static final Limits<Dimensionless> MANNING = Limits.of(Measure.FRACTION, "0.008", "0.06");

  /** Running time a day. */
  public static final Limits<Time> RUNNING_TIME = Limits.of(Measure.TIME, "1 min", "24 h");

  /** Settling velocity of coated grains over that of clean ones. */
  public static final Limits<Dimensionless> COATING = Limits.of(Measure.FRACTION, "0.3", "1");

  /** Share of its head that a worn pump has lost. */
  public static final Limits<Dimensionless> WORN = Limits.of(Measure.FRACTION, "0 %", "50 %");

  /** Flow rate of a point of a pump curve. */
  public static final Limits<VolumetricFlowRate> CURVE_FLOW =
      Limits.of(Measure.FLOW, "0 L/s", "2000 L/s");

  /** Head of a point of a pump curve. */
  public static final Limits<Length> CURVE_HEAD = Limits.of(Measure.LENGTH, "0 m", "500 m");

  /** Length or width of a unit or a pond. */
  public static final Limits<Length> SIDE = Limits.of(Measure.LENGTH, "0.2 m", "1000 m");

  /** Depth of a unit or a pond. */
  public static final Limits<Length> DEPTH = Limits.of(Measure.LENGTH, "0.01 m", "20 m");

  /** Mean flow rate of water in a plant. */
  public static final Limits<VolumetricFlowRate> WATER =
      Limits.of(Measure.FLOW, "0 m3/d", "20000 m3/d");

  /** Volume of a pit. */
  public static final Limits<Volume> PIT = Limits.of(Measure.VOLUME, "0.1 m3", "200000 m3");

  /** Volume of what a pit or storage holds. */
  public static final Limits<Volume> CONTENTS = Limits.of(Measure.VOLUME, "0 m3", "200000 m3");

  /** Time for which sand waits, in a lane or a stack. */
  public static final Limits<Time> WAIT = Limits.of(Measure.TIME, "0 d", "365 d");

  /** Time of the day. */
  public static final Limits<Time> CLOCK = Limits.of(Measure.TIME, "0 h", "24 h");

  private CommonLimits() {}
}
