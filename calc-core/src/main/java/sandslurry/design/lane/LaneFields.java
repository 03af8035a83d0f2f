package sandslurry.design.lane;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of a settling lane that stands alone. */
public final class LaneFields extends Fields<LaneSpec> {
  private static final Type<Double> LENGTH = Type.quantity(Measure.LENGTH, "1 m", "500 m");
  private static final Type<Double> WIDTH = Type.quantity(Measure.LENGTH, "0.2 m", "50 m");
  private static final Type<Double> DEPTH = Type.quantity(Measure.LENGTH, "5 mm", "5 m");

  private final Field<Double> length =
      needed("length", LENGTH)
          .label("Length")
          .means("length in the direction of flow")
          .such("30 m", "100 ft");
  private final Field<Double> width =
      needed("width", WIDTH)
          .label("Clear width")
          .means("width between the walls")
          .such("3 m", "10 ft");
  private final Field<Double> slope =
      standard("slope", CommonLimits.SLOPE, "0 %")
          .label("Slope")
          .means("fall over length")
          .such("0.25 %");
  private final Field<Double> manning =
      standard("manning", CommonLimits.MANNING, "0.015")
          .label("Manning's n")
          .means("Manning's roughness n of the channel")
          .such("0.015");
  private final Field<Double> flow =
      needed("flow", CommonLimits.FLOW)
          .label("Flow rate of mixture")
          .means("flow rate of mixture while the lane runs")
          .such("30 L/s", "470 gal/min");
  private final Field<Optional<Double>> depth =
      optional("depth", DEPTH, "default: normal depth")
          .label("Depth, if a weir sets it")
          .means(
              "depth of flow that an outlet weir sets; without one the lane flows at the normal"
                  + " depth of its slope by Manning")
          .such("150 mm", "6 in");
  private final Field<Optional<Double>> sand =
      optional("sandVolumeFraction", CommonLimits.VOLUME_FRACTION, "default: as in the line")
          .label("Sand by volume")
          .means(
              "volume of sand over volume of mixture that enters; without it that of the only line"
                  + " at its design flow rate")
          .such("2 %");
  private final Field<Double> storage =
      needed("sandStorageDepth", DEPTH)
          .label("Depth kept for sand")
          .means("depth of sand before the lane is emptied")
          .such("300 mm", "12 in");
  private final Field<Double> running =
      standard("runningTime", CommonLimits.RUNNING_TIME, "24 h")
          .label("Running time a day")
          .means("time that the lane runs each day")
          .such("8 h");
  private final Field<Double> coating =
      standard("coatingFactor", CommonLimits.COATING, "1")
          .label("Coated grains, factor")
          .means("settling velocity of coated grains over that of clean ones")
          .such("0.8");

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
        values -> values.has(depth) || values.get(slope) > 0,
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
            values.number(depth),
            values.get(sand),
            values.get(storage),
            values.get(running),
            values.get(coating)));
  }
}
