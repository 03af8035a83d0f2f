package sandslurry.design.lane;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Limits;
import sandslurry.fact.Values;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** The fields of a settling lane that stands alone. */
public final class LaneFields extends Fields<LaneSpec> {
  private static final Limits<Length> LENGTH = Limits.of(Measure.LENGTH, "1 m", "500 m");
  private static final Limits<Length> WIDTH = Limits.of(Measure.LENGTH, "0.2 m", "50 m");
  private static final Limits<Length> DEPTH = Limits.of(Measure.LENGTH, "5 mm", "5 m");

  private final Field<Quantity<Length>> length =
      needed("length", LENGTH, "Length", "length in the direction of flow", "30 m", "100 ft");
  private final Field<Quantity<Length>> width =
      needed("width", WIDTH, "Clear width", "width between the walls", "3 m", "10 ft");
  private final Field<Quantity<Dimensionless>> slope =
      standard("slope", CommonLimits.SLOPE, "0 %", "Slope", "fall over length", "0.25 %");
  private final Field<Quantity<Dimensionless>> manning =
      standard(
          "manning",
          CommonLimits.MANNING,
          "0.015",
          "Manning's n",
          "Manning's roughness n of the channel",
          "0.015");
  private final Field<Quantity<VolumetricFlowRate>> flow =
      needed(
          "flow",
          CommonLimits.FLOW,
          "Flow rate of mixture",
          "flow rate of mixture while the lane runs",
          "30 L/s",
          "470 gal/min");
  private final Field<Optional<Quantity<Length>>> depth =
      optional(
          "depth",
          DEPTH,
          "default: normal depth",
          "Depth, if a weir sets it",
          "depth of flow that an outlet weir sets; without one the lane flows at the normal"
              + " depth of its slope by Manning",
          "150 mm",
          "6 in");
  private final Field<Optional<Quantity<Dimensionless>>> sand =
      optional(
          "sandVolumeFraction",
          CommonLimits.VOLUME_FRACTION,
          "default: as in the line",
          "Sand by volume",
          "volume of sand over volume of mixture that enters; without it that of the only line"
              + " at its design flow rate",
          "2 %");
  private final Field<Quantity<Length>> storage =
      needed(
          "sandStorageDepth",
          DEPTH,
          "Depth kept for sand",
          "depth of sand before the lane is emptied",
          "300 mm",
          "12 in");
  private final Field<Quantity<Time>> running =
      standard(
          "runningTime",
          CommonLimits.RUNNING_TIME,
          "24 h",
          "Running time a day",
          "time that the lane runs each day",
          "8 h");
  private final Field<Quantity<Dimensionless>> coating =
      standard(
          "coatingFactor",
          CommonLimits.COATING,
          "1",
          "Coated grains, factor",
          "settling velocity of coated grains over that of clean ones",
          "0.8");

  /** Declares the fields and the rules between them. */
  public LaneFields() {
    super("lane", "settling lane");
    neededWhen(
        sand,
        seen -> !seen.has("/lines/0/mixture") || seen.has("/lines/1"),
        "without a line, or with several, there is no other mixture to take");
    rule(
        depth,
        List.of(slope),
        values -> values.has(depth) || Measure.FRACTION.si(values.get(slope)) > 0,
        values -> "is missing: a lane without slope has no normal depth, so give one");
  }

  @Override
  protected Optional<LaneSpec> make(Values values) {
    return Optional.of(
        new LaneSpec(
            values.get(length),
            values.get(width),
            values.get(slope),
            values.get(manning),
            values.get(flow),
            values.get(depth),
            values.get(sand),
            values.get(storage),
            values.get(running),
            values.get(coating)));
  }
}
