package sandslurry.design;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** Limits of fields that several parts of a plant have. */
final class PlantLimits {
  static final Limits<Length> SIDE = Limits.of(Measure.LENGTH, "0.2 m", "1000 m");
  static final Limits<Length> DEPTH = Limits.of(Measure.LENGTH, "0.01 m", "20 m");
  static final Limits<Dimensionless> POSITIVE_SHARE = Limits.of(Measure.FRACTION, "1 %", "100 %");
  static final Limits<Dimensionless> MOST_SHARE = Limits.of(Measure.FRACTION, "0 %", "90 %");
  static final Limits<VolumetricFlowRate> WATER = Limits.of(Measure.FLOW, "0 m3/d", "20000 m3/d");
  static final Limits<Volume> PIT = Limits.of(Measure.VOLUME, "0.1 m3", "200000 m3");
  static final Limits<Volume> CONTENTS = Limits.of(Measure.VOLUME, "0 m3", "200000 m3");
  static final Limits<Time> WAIT = Limits.of(Measure.TIME, "0 d", "365 d");
  static final Limits<Time> CLOCK = Limits.of(Measure.TIME, "0 h", "24 h");

  private PlantLimits() {}
}
