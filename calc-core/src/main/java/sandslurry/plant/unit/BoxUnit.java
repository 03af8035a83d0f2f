package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Constituents;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.BoxResult;
import sandslurry.separation.box.BoxSand;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.capture.Outlook;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * A dilution settling box.
 *
 * @param place where it stands in the plant
 * @param box the box
 * @param rinse the stream of clean water that rinses, one of the streams in; empty for no rinse
 * @param rinseEfficiency share of the pore liquor that one pore volume of rinse displaces
 * @param shearRatePs shear rate at which the viscosity of its liquor counts [1/s]
 */
public record BoxUnit(
    Place place, DilutionBox box, Optional<String> rinse, Range rinseEfficiency, double shearRatePs)
    implements Separator {

  @Override
  public String kind() {
    return "box";
  }

  @Override
  public Role role() {
    return Role.SETTLES;
  }

  @Override
  public Optional<Divided> divide(Conditions c, Stream stream, double share) {
    return rinsed(c, stream, share)
        .map(in -> divided(in.box().sand(in.feed(), c.organic(in.feed()), c.outlook())));
  }

  /** Half of the water is the depth of sand to clean a box at too: common practice, no source. */
  private Divided divided(BoxSand sand) {
    double load = sand.screwLoad().orElse(0);
    if (!(load > 1)) {
      return divided(sand.partition());
    }
    double left = sand.bulkM3ps() * (1 - 1 / load);
    double fillsS = box.areaM2() * box.waterDepthM() / 2 / left;
    return divided(sand.partition(), UnitNote.Reason.SCREW_OVERLOADED, load, fillsS);
  }

  /** What the box, as it is rinsed, does with its feed without the water of the rinse. */
  private record Settled(UnitFeed feed, DilutionBox box, BoxResult result) {}

  private Optional<Settled> settled(Conditions c, Stream stream, double share) {
    return rinsed(c, stream, share)
        .map(
            in ->
                new Settled(
                    in.feed(), in.box(), in.box().evaluate(in.feed(), c.organic(in.feed()))));
  }

  /** The box, as it is rinsed, and its feed without the water of the rinse. */
  private record Rinsed(UnitFeed feed, DilutionBox box) {}

  /**
   * How the box is rinsed when all this flows in. The rinse is taken out of the mixture of all
   * streams: only clean water that comes for the rinse cleans, water in the slurry does not.
   */
  private Optional<Rinsed> rinsed(Conditions c, Stream stream, double share) {
    Optional<UnitFeed> mixed = c.settling(stream, share, shearRatePs);
    if (mixed.isEmpty()) {
      return Optional.empty();
    }
    DilutionBox rinsed = box(c).rinsedWith(mixed.get(), cleanM3ps(c) / share);
    double rinsing =
        rinsed.rinseM3ps(mixed.get()) * share * stream.constituents().waterDensityKgM3();
    double[] flows = stream.toArray();
    flows[Constituents.WATER] = Math.max(0, flows[Constituents.WATER] - rinsing);
    return c.settling(Stream.of(stream.constituents(), flows), share, shearRatePs)
        .map(feed -> new Rinsed(feed, rinsed));
  }

  private DilutionBox box(Conditions c) {
    return new DilutionBox(
        box.areaM2() * c.areaFactor(),
        box.waterDepthM(),
        box.effectiveShare(),
        box.sandMoisture(),
        box.rinsePoreVolumes(),
        c.cleanness().applyAsDouble(rinseEfficiency),
        box.screwCapacityM3ps(),
        box.depositPorosity());
  }

  /** Clean water that comes for the rinse, on the average of the day. */
  private double cleanM3ps(Conditions c) {
    return rinse.map(c.freshM3ps()::applyAsDouble).orElse(0.0);
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    Stream feed = balance.feed(name());
    double share = seen(balance);
    return new AtBalance(this, feed, share, cleanM3ps(c) > 0, settled(c, feed, share));
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of(name(), box.screwCapacityM3ps().isPresent() ? Part.SCREW : Part.SEPARATOR);
  }

  @Override
  public OptionalDouble fullAfterS(Stream solids) {
    double caught =
        solids.sandKgps() / solids.constituents().sandDensityKgM3() / (1 - box.depositPorosity());
    return caught > 0
        ? OptionalDouble.of(box.areaM2() * box.waterDepthM() / caught)
        : OptionalDouble.empty();
  }

  @Override
  public OptionalDouble staysS(Stream feed, double share) {
    return feed.volumeM3ps() > 0
        ? OptionalDouble.of(box.areaM2() * box.waterDepthM() * share / feed.volumeM3ps())
        : OptionalDouble.empty();
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.of(
        new Care(
            "water runs over the whole weir; "
                + (shown.bedding().test(place.solids())
                    ? "the sand that comes out is grey and drained"
                    : "what comes out is even from hour to hour")
                + shown.figure("water in the sand", ", water ")
                + shown.figure("load of the screw", "; the screw turns, load ")
                + ".",
            "measure the sand above the screw with a rod; have the sand tested for organic matter"
                + " and moisture; look at the wear of the screw"
                + (box.rinsePoreVolumes() > 0
                    ? shown.figure("rinse water", "; measure the rinse, ")
                    : "")
                + ".",
            "the flow keeps to one side (short-circuiting); sand settles in a jar of the overflow;"
                + " the sand is dark and smells; the screw is overloaded or stalls.",
            "when the rod finds sand over half the depth of water ("
                + shown.show(Kind.LENGTH, box.waterDepthM())
                + "), and once a year."));
  }

  /** What the box does at a balance. */
  private record AtBalance(
      BoxUnit unit, Stream feed, double share, boolean clean, Optional<Settled> settled)
      implements UnitResult {
    @Override
    public List<Figure> figures() {
      if (settled.isEmpty()) {
        return List.of();
      }
      BoxResult result = settled.get().result();
      BoxSand likely = result.sand(Outlook.LIKELY);
      Figures figures =
          new Figures()
              .add("sand-free solids of the feed", Kind.PERCENT, feed.totalSolids())
              .add("overflow rate", Kind.FALL, result.overflowVelocityMps())
              .add("detention time", Kind.TIME, result.residenceTimeS());
      double fed = feed.sandKgps() / share;
      if (fed > 0) {
        figures.band(
            "capture of its sand",
            result.sands().stream().map(sand -> Math.min(1, sand.sandKgps() / fed)).toList());
      }
      figures
          .add("water in the sand", Kind.PERCENT, likely.moisture())
          .add("dry matter other than sand in it", Kind.PERCENT, likely.foreignMatter());
      likely.screwLoad().ifPresent(load -> figures.add("load of the screw", Kind.PERCENT, load));
      return figures.add("rinse water", Kind.FLOW, result.rinseM3ps()).all();
    }

    @Override
    public List<Bound.Excess> excesses() {
      return settled.map(found -> found.result().excesses()).orElse(List.of());
    }

    @Override
    public void steps(Trace trace) {
      Sheet sheet = Sheet.of(BoxUnit.class, trace);
      settled.ifPresent(found -> steps(sheet, found.feed(), found.box(), found.result()));
    }

    private void steps(Sheet sheet, UnitFeed fed, DilutionBox box, BoxResult result) {
      BoxSand likely = result.sand(Outlook.LIKELY);
      sheet.begin("box " + unit.name(), "");
      double rinse = result.rinseM3ps();
      if (rinse > 0) {
        sheet.step(
            "rinse",
            rinse,
            box.rinsePoreVolumes(),
            fed.sandTotalKgps(),
            box.sandMoisture(),
            fed.liquid().densityKgM3());
      }
      double rising =
          sheet.step(
              "rising",
              result.overflowVelocityMps(),
              fed.mixtureM3ps(),
              rinse,
              box.effectiveShare(),
              box.areaM2());
      sheet.step(
          "stay",
          result.residenceTimeS(),
          box.areaM2(),
          box.waterDepthM(),
          fed.mixtureM3ps(),
          rinse);
      if (fed.sandTotalKgps() > 0) {
        double caught = sheet.step("sand", likely.sandKgps(), fed.sandTotalKgps());
        sheet.step("capture", caught / fed.sandTotalKgps(), caught, fed.sandTotalKgps());
      }
      if (likely.screwLoad().isPresent()) {
        sheet.step(
            "lifted",
            likely.screwLoad().getAsDouble(),
            likely.sandKgps(),
            fed.sandDensityKgM3(),
            box.depositPorosity(),
            box.screwCapacityM3ps().orElseThrow());
      }
      for (int k = 0; k < fed.sizes().size(); k++) {
        sheet.begin(
            "sand in box " + unit.name(),
            UnitSystem.METRIC.show(Kind.GRAIN, fed.sizes().get(k).meanM()));
        double fall = sheet.step("hindered", result.velocitiesMps().get(k));
        sheet.step(
            "caught", likely.partition().sand().get(k), fall, DilutionBox.AVERAGE_BASINS, rising);
      }
    }

    @Override
    public void judge(UnitFindings found) {
      settled.ifPresent(any -> found.held(unit.name(), any.feed()));
      if (unit.box().rinsePoreVolumes() > 0 && !clean) {
        found
            .found("not-rinsed", Severity.CAUTION, unit.name())
            .with("volumes", Kind.NUMBER, unit.box().rinsePoreVolumes())
            .why("not-rinsed")
            .cure("rinse-stream")
            .add();
      }
    }
  }

  /** A dilution settling box. */
  static final class BoxFields extends UnitFields.HeldFields {
    /** The published range of displacement washing, and its middle. */
    private static final Range RINSED = new Range(0.35, 0.6, 0.86);

    private final Field<String> sand = stream("sand", "Sand stream", "the stream of sand", "sand");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream over the weir", "box overflow");
    private final Field<Double> length =
        needed("length", CommonLimits.SIDE)
            .label("Length of surface")
            .means("length of the water surface")
            .such("3 m", "10 ft");
    private final Field<Double> width =
        needed("width", CommonLimits.SIDE)
            .label("Width of surface")
            .means("width of the water surface")
            .such("1.2 m", "4 ft");
    private final Field<Double> depth =
        standard("waterDepth", CommonLimits.DEPTH, "1 m")
            .label("Water depth over screw")
            .means("depth of water above the screw")
            .such("1.2 m", "4 ft");
    private final Field<Double> effective =
        standard("effectiveShare", CommonLimits.POSITIVE_SHARE, "100 %")
            .label("Effective surface")
            .means("share of the surface that works")
            .such("80 %");
    private final Field<Double> moisture =
        standard("sandMoisture", CommonLimits.MOST_SHARE, "18 %")
            .label("Moisture of raked sand")
            .means("water in the raked sand, by mass")
            .such("18 %");
    private final Field<Double> rinse =
        standard("rinsePoreVolumes", Type.quantity(Measure.NUMBER, "0", "20"), "0")
            .label("Rinse, pore volumes")
            .means("rinse water in pore volumes of the sand, as far as the rinse stream brings it")
            .such("1.5");
    private final Field<Optional<String>> rinseStream =
        optional(
                "rinseStream",
                Type.name("a stream of fresh water that flows in"),
                "no rinse: water in the slurry cleans nothing")
            .label("Rinse stream")
            .means("name of the stream of fresh water that rinses the sand, one of the streams in")
            .such("rinse water");
    private final Field<Optional<Range>> rinsed =
        optional(
                "rinseEfficiency",
                new Span<>(CommonLimits.MOST_SHARE, Range::new),
                "default: 60 %, 35 to 86")
            .label("Rinse efficiency")
            .means("share of the pore liquor that one pore volume of rinse displaces")
            .such("60 %");
    private final Field<Optional<Double>> screw =
        optional("screwCapacity", CommonLimits.WATER, "not checked")
            .label("Screw capacity, bulk")
            .means("bulk volume of sand that the screw can lift per time")
            .such("3 m3/h", "100 ft3/min");
    private final Field<Double> porosity =
        standard("porosity", CommonLimits.MOST_SHARE, "45 %")
            .label("Porosity of raked sand")
            .means("pores over bulk volume of the raked sand")
            .such("45 %");
    private final Field<Double> shear =
        standard("shearRate", SHEAR, "10 1/s")
            .label("Shear rate of viscosity")
            .means("shear rate at which the viscosity of the liquor counts")
            .such("10 1/s");
    private final Field<Double> running = running();

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
                      place(values, sand, over, running),
                      new DilutionBox(
                          values.get(length) * values.get(width),
                          values.get(depth),
                          values.get(effective),
                          values.get(moisture),
                          values.get(rinse),
                          displaced.base(),
                          values.number(screw),
                          values.get(porosity)),
                      values.get(rinseStream),
                      displaced,
                      values.get(shear))));
    }
  }
}
