package sandslurry.design;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** Reads a settling lane that stands alone. */
final class LaneReader {
  private static final Limits<Length> LANE_LENGTH = Limits.of(Measure.LENGTH, "1 m", "500 m");
  private static final Limits<Length> LANE_WIDTH = Limits.of(Measure.LENGTH, "0.2 m", "50 m");
  private static final Limits<Length> LANE_DEPTH = Limits.of(Measure.LENGTH, "5 mm", "5 m");

  private LaneReader() {}

  static Optional<LaneSpec> lane(Section part, boolean mixtureThere, boolean lineThere) {
    Optional<Quantity<Length>> length = part.required("length", LANE_LENGTH);
    Optional<Quantity<Length>> width = part.required("width", LANE_WIDTH);
    Optional<Quantity<Dimensionless>> slope = part.orDefault("slope", DesignReader.SLOPE, "0 %");
    Optional<Quantity<Dimensionless>> manning =
        part.orDefault("manning", DesignReader.MANNING, "0.015");
    Optional<Quantity<VolumetricFlowRate>> flow = part.required("flow", DesignReader.FLOW);
    Optional<Quantity<Length>> depth = part.optional("depth", LANE_DEPTH);
    Optional<Quantity<Dimensionless>> sand =
        part.optional("sandVolumeFraction", DesignReader.VOLUME_FRACTION);
    Optional<Quantity<Length>> storage = part.required("sandStorageDepth", LANE_DEPTH);
    Optional<Quantity<Time>> running =
        part.orDefault("runningTime", DesignReader.RUNNING_TIME, "24 h");
    Optional<Quantity<Dimensionless>> coating =
        part.orDefault("coatingFactor", DesignReader.COATING, "1");
    if (!part.has("sandVolumeFraction") && !(mixtureThere && lineThere)) {
      part.problem(
          "sandVolumeFraction", "is missing: without a line there is no other mixture to take");
    }
    if (!part.has("depth") && slope.isPresent() && !(DesignReader.number(slope.get()) > 0)) {
      part.problem("depth", "is missing: a lane without slope has no normal depth, so give one");
    }
    part.refuseUnknown();
    return Section.there(length, width, slope, manning, flow, storage, running, coating)
        ? Optional.of(
            new LaneSpec(
                length.get(),
                width.get(),
                slope.get(),
                manning.get(),
                flow.get(),
                depth,
                sand,
                storage.get(),
                running.get(),
                coating.get()))
        : Optional.empty();
  }
}
