package sandslurry.design.criteria;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.fact.Limits;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** Limits of fields that several parts of a design have. */
public final class CommonLimits {
  public static final Limits<Dimensionless> SHARE = Limits.of(Measure.FRACTION, "0 %", "100 %");
  public static final Limits<Dimensionless> POSITIVE_SHARE =
      Limits.of(Measure.FRACTION, "1 %", "100 %");
  public static final Limits<Dimensionless> MOST_SHARE = Limits.of(Measure.FRACTION, "0 %", "90 %");
  public static final Limits<Temperature> TEMPERATURE =
      Limits.of(Measure.TEMPERATURE, "0.1 degC", "45 degC");
  public static final Limits<Dimensionless> TOTAL_SOLIDS =
      Limits.of(Measure.FRACTION, "0 %", "13 %");
  public static final Limits<Dimensionless> VOLUME_FRACTION =
      Limits.of(Measure.FRACTION, "0 %", "40 %");
  public static final Limits<VolumetricFlowRate> FLOW =
      Limits.of(Measure.FLOW, "0.05 L/s", "2000 L/s");
  public static final Limits<Length> LEVEL = Limits.of(Measure.LENGTH, "-30 m", "100 m");
  public static final Limits<Length> BORE = Limits.of(Measure.LENGTH, "20 mm", "1200 mm");
  public static final Limits<Pressure> RATING = Limits.of(Measure.PRESSURE, "10 kPa", "50 MPa");
  public static final Limits<Dimensionless> SLOPE = Limits.of(Measure.FRACTION, "0 %", "10 %");
  public static final Limits<Dimensionless> MANNING = Limits.of(Measure.FRACTION, "0.008", "0.06");
  public static final Limits<Time> RUNNING_TIME = Limits.of(Measure.TIME, "1 min", "24 h");
  public static final Limits<Dimensionless> COATING = Limits.of(Measure.FRACTION, "0.3", "1");
  public static final Limits<Dimensionless> WORN = Limits.of(Measure.FRACTION, "0 %", "50 %");
  public static final Limits<VolumetricFlowRate> CURVE_FLOW =
      Limits.of(Measure.FLOW, "0 L/s", "2000 L/s");
  public static final Limits<Length> CURVE_HEAD = Limits.of(Measure.LENGTH, "0 m", "500 m");
  public static final Limits<Length> SIDE = Limits.of(Measure.LENGTH, "0.2 m", "1000 m");
  public static final Limits<Length> DEPTH = Limits.of(Measure.LENGTH, "0.01 m", "20 m");
  public static final Limits<VolumetricFlowRate> WATER =
      Limits.of(Measure.FLOW, "0 m3/d", "20000 m3/d");
  public static final Limits<Volume> PIT = Limits.of(Measure.VOLUME, "0.1 m3", "200000 m3");
  public static final Limits<Volume> CONTENTS = Limits.of(Measure.VOLUME, "0 m3", "200000 m3");
  public static final Limits<Time> WAIT = Limits.of(Measure.TIME, "0 d", "365 d");
  public static final Limits<Time> CLOCK = Limits.of(Measure.TIME, "0 h", "24 h");

  private CommonLimits() {}
}
