package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Limits;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Range;
import sandslurry.separation.box.DilutionBox;
import sandslurry.units.Measure;

/**
 * A dilution settling box.
 *
 * @param name its name
 * @param inlets streams in
 * @param sand stream of sand out
 * @param overflow stream over the weir
 * @param runningShare share of the day that it runs
 * @param box the box
 * @param rinse the stream of clean water that rinses, one of the streams in; empty for no rinse
 * @param rinseEfficiency share of the pore liquor that one pore volume of rinse displaces
 * @param shearRatePs shear rate at which the viscosity of its liquor counts [1/s]
 */
public record BoxUnit(
    String name,
    List<String> inlets,
    String sand,
    String overflow,
    double runningShare,
    DilutionBox box,
    Optional<String> rinse,
    Range rinseEfficiency,
    double shearRatePs)
    implements PlantUnit {
  @Override
  public List<String> outlets() {
    return List.of(sand, overflow);
  }

  @Override
  public List<String> byGravity() {
    return List.of(overflow);
  }

  @Override
  public String kind() {
    return "box";
  }

  /** A dilution settling box. */
  static final class BoxFields extends UnitFields.HeldFields {
    /** The published range of displacement washing, and its middle. */
    private static final Range RINSED = new Range(0.35, 0.6, 0.86);

    private final Field<String> sand = stream("sand", "Sand stream", "the stream of sand", "sand");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream over the weir", "box overflow");
    private final Field<Double> length =
        needed(
            "length",
            CommonLimits.SIDE.si(),
            "Length of surface",
            "length of the water surface",
            "3 m",
            "10 ft");
    private final Field<Double> width =
        needed(
            "width",
            CommonLimits.SIDE.si(),
            "Width of surface",
            "width of the water surface",
            "1.2 m",
            "4 ft");
    private final Field<Double> depth =
        standard(
            "waterDepth",
            CommonLimits.DEPTH.si(),
            "1 m",
            "Water depth over screw",
            "depth of water above the screw",
            "1.2 m",
            "4 ft");
    private final Field<Double> effective =
        standard(
            "effectiveShare",
            CommonLimits.POSITIVE_SHARE.si(),
            "100 %",
            "Effective surface",
            "share of the surface that works",
            "80 %");
    private final Field<Double> moisture =
        standard(
            "sandMoisture",
            CommonLimits.MOST_SHARE.si(),
            "18 %",
            "Moisture of raked sand",
            "water in the raked sand, by mass",
            "18 %");
    private final Field<Double> rinse =
        standard(
            "rinsePoreVolumes",
            Limits.of(Measure.FRACTION, "0", "20").si(),
            "0",
            "Rinse, pore volumes",
            "rinse water in pore volumes of the sand, as far as the rinse stream brings it",
            "1.5");
    private final Field<Optional<String>> rinseStream =
        optional(
            "rinseStream",
            Type.name("a stream of fresh water that flows in"),
            "no rinse: water in the slurry cleans nothing",
            "Rinse stream",
            "name of the stream of fresh water that rinses the sand, one of the streams in",
            "rinse water");
    private final Field<Optional<Range>> rinsed =
        optional(
            "rinseEfficiency",
            new Span<>(CommonLimits.MOST_SHARE.si(), Range::new),
            "default: 60 %, 35 to 86",
            "Rinse efficiency",
            "share of the pore liquor that one pore volume of rinse displaces",
            "60 %");
    private final Field<Optional<Double>> screw =
        optional(
            "screwCapacity",
            CommonLimits.WATER.si(),
            "not checked",
            "Screw capacity, bulk",
            "bulk volume of sand that the screw can lift per time",
            "3 m3/h",
            "100 ft3/min");
    private final Field<Double> porosity =
        standard(
            "porosity",
            CommonLimits.MOST_SHARE.si(),
            "45 %",
            "Porosity of raked sand",
            "pores over bulk volume of the raked sand",
            "45 %");
    private final Field<Double> shear =
        standard(
            "shearRate",
            SHEAR,
            "10 1/s",
            "Shear rate of viscosity",
            "shear rate at which the viscosity of the liquor counts",
            "10 1/s");
    private final Field<Double> running = running("20 h");

    BoxFields() {
      super("box", "dilution settling box");
      rule(
          rinseStream,
          List.of(in),
          values -> values.get(rinseStream).map(values.get(in)::contains).orElse(true),
          values -> "must be one of the streams that flow in");
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(values, List.of(out(values, sand), out(values, over)));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      Range displaced = values.get(rinsed).orElse(RINSED);
      return values.made(
          screw,
          () ->
              List.of(
                  new BoxUnit(
                      values.get(name),
                      values.get(in),
                      values.get(sand),
                      values.get(over),
                      values.get(running),
                      new DilutionBox(
                          values.get(length) * values.get(width),
                          values.get(depth),
                          values.get(effective),
                          values.get(moisture),
                          values.get(rinse),
                          displaced.base(),
                          maybe(values.get(screw)),
                          values.get(porosity)),
                      values.get(rinseStream),
                      displaced,
                      values.get(shear))));
    }
  }
}
