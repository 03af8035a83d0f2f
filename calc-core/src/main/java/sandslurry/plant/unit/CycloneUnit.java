package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Correlation;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.cyclone.CyclonePerformance;
import sandslurry.separation.cyclone.CycloneResult;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * Hydrocyclones side by side.
 *
 * @param place where it stands in the plant
 * @param cyclone the cyclones
 * @param model the model
 * @param shearRatePs shear rate at which the viscosity of the liquor counts [1/s]
 * @param pumpEfficiency efficiency of feed pump and motor
 */
public record CycloneUnit(
    Place place,
    Hydrocyclone cyclone,
    HydrocycloneModel model,
    double shearRatePs,
    double pumpEfficiency)
    implements Separator {
  /** Its underflow is thin enough to run. */
  @Override
  public List<String> byGravity() {
    return outlets();
  }

  @Override
  public String kind() {
    return "cyclone";
  }

  @Override
  public Role role() {
    return Role.SPINS;
  }

  @Override
  public Optional<Divided> divide(Conditions c, Stream stream, double share) {
    HydrocycloneModel by = c.cyclones().orElse(model);
    return c.settling(stream, share, shearRatePs)
        .map(feed -> divided(feed, cyclone.evaluate(feed, by)));
  }

  private Divided divided(UnitFeed feed, CycloneResult result) {
    if (!cyclone.spins(result)) {
      return divided(
          Partition.nothing(feed.sizes().size()),
          UnitNote.Reason.NO_VORTEX,
          result.headM(),
          cyclone.geometry().freeVortexM());
    }
    return result.ropes()
        ? divided(
            result.partition(), UnitNote.Reason.ROPES, result.underflowSand(), result.ropingLimit())
        : divided(result.partition());
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    Stream feed = balance.feed(name());
    Optional<UnitFeed> seen = c.settling(feed, seen(balance), shearRatePs);
    return seen.isEmpty() ? UnitResult.NONE : new AtBalance(this, feed, seen.get());
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of(name(), Part.SEPARATOR);
  }

  /** The pump runs a share of each mode; its mean over the day is what counts. */
  @Override
  public Optional<EnergyUse> energy(
      Conditions c, ToDoubleFunction<ToDoubleFunction<SteadyBalance>> meanOverDay) {
    double watts =
        meanOverDay.applyAsDouble(
            balance ->
                seen(balance)
                    * c.settling(balance.feed(name()), seen(balance), shearRatePs)
                        .map(feed -> cyclone.evaluate(feed, model).hydraulicPowerW())
                        .orElse(0.0));
    return Optional.of(new EnergyUse("pump of " + name(), Range.of(watts / pumpEfficiency), 1));
  }

  @Override
  public Optional<Correlation> decidedBy() {
    return Optional.of(model);
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.of(
        new Care(
            "the underflow leaves as an open spray; the gauge at the inlet shows a steady pressure"
                + shown.figure("pressure drop (" + model.name() + ")", ", about ")
                + ".",
            "measure the apex with a gauge and note it; measure the flow rate of the feed"
                + shown.figure("feed while it runs", ", ")
                + ".",
            "the underflow comes as a rope or drips (roping); the pressure falls (worn pump or"
                + " apex) or rises (blocked); sand settles in a jar of the overflow.",
            "flush with water after each run; open it when the spray does not come back; replace a"
                + " worn apex."));
  }

  /** What the cyclones do at a balance. */
  private record AtBalance(CycloneUnit unit, Stream feed, UnitFeed seen, CycloneResult own)
      implements UnitResult {
    AtBalance(CycloneUnit unit, Stream feed, UnitFeed seen) {
      this(unit, feed, seen, unit.cyclone().evaluate(seen, unit.model()));
    }

    @Override
    public List<Figure> figures() {
      Figures figures = new Figures().feed(feed, seen);
      for (HydrocycloneModel by : HydrocycloneModels.FAMILY.all()) {
        CyclonePerformance found = unit.cyclone().evaluate(seen, by).performance();
        String of = " (" + by.name() + ")";
        figures
            .add("cut size" + of, Kind.GRAIN, found.cutSizeM())
            .add("pressure drop" + of, Kind.PRESSURE, found.pressureDropPa())
            .add("feed to the underflow" + of, Kind.PERCENT, found.underflowShare());
      }
      return figures
          .add("sand in the underflow, by volume", Kind.PERCENT, own.underflowSand())
          .add("roping from", Kind.PERCENT, own.ropingLimit())
          .add("head of the feed pump", Kind.HEAD, own.headM())
          .add("hydraulic power", Kind.POWER, own.hydraulicPowerW())
          .all();
    }

    @Override
    public void judge(UnitFindings found) {
      double pressure = own.performance().pressureDropPa();
      if (pressure > Hydrocyclone.USUAL_PA) {
        boolean beyond = pressure > Hydrocyclone.PUMPED_PA;
        found
            .found(
                beyond ? "cyclone-not-pumped" : "cyclone-pressure",
                beyond ? Severity.FAIL : Severity.CAUTION,
                unit.name())
            .with("pressure", Kind.PRESSURE, pressure)
            .with("head", Kind.HEAD, own.headM())
            .with("usual", Kind.PRESSURE, Hydrocyclone.USUAL_PA)
            .with("pumped", Kind.PRESSURE, Hydrocyclone.PUMPED_PA)
            .why(beyond ? "cyclone-not-pumped" : "cyclone-pressure")
            .cure("cyclone-pressure")
            .add();
      }
    }

    @Override
    public List<Bound.Excess> excesses() {
      return own.performance().excesses();
    }

    @Override
    public void steps(Trace trace) {
      trace.begin("hydrocyclone " + unit.name(), "");
      unit.model().performance(unit.cyclone().geometry(), own.feed(), trace);
    }
  }

  /** Hydrocyclones side by side. */
  static final class CycloneFields extends UnitFields.HeldFields {
    private final Field<String> under =
        stream("underflow", "Underflow stream", "the stream of sand", "underflow");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream of liquor", "cyclone overflow");
    private final Field<Double> body =
        needed("body", SMALL)
            .label("Body diameter")
            .means("inside diameter of the body")
            .such("250 mm", "10 in");
    private final Field<Double> apex =
        needed("apex", SMALL)
            .label("Apex diameter")
            .means("diameter of the apex")
            .such("40 mm", "1.5 in");
    private final Field<Optional<Double>> inlet =
        optional("inlet", SMALL, "default: 0.28 body")
            .label("Inlet, as a circle")
            .means(
                "diameter of a circle of the area of the inlet; openings left out are in the"
                    + " proportions of Rietema")
            .such("70 mm", "3 in");
    private final Field<Optional<Double>> finder =
        optional("vortexFinder", SMALL, "default: 0.34 body")
            .label("Vortex finder")
            .means("diameter of the vortex finder")
            .such("85 mm", "3.5 in");
    private final Field<Optional<Double>> vortex =
        optional("freeVortex", CommonLimits.DEPTH, "default: 4.6 body")
            .label("Free vortex height")
            .means("height from the vortex finder to the apex")
            .such("1.1 m", "4 ft");
    private final Field<Integer> parallel =
        standard("parallel", Type.count(200), "1")
            .label("Cyclones in parallel")
            .means("how many cyclones work side by side")
            .such("2");
    private final Field<HydrocycloneModel> model =
        standard(
                "model",
                Type.choice(
                    HydrocycloneModels.FAMILY.all(),
                    HydrocycloneModel::id,
                    HydrocycloneModel::name),
                HydrocycloneModels.DEFAULT.id())
            .label("Cut and pressure by")
            .means("the model of cut and pressure that judges; the report shows all");
    private final Field<Double> shear =
        standard("shearRate", SHEAR, "200 1/s")
            .label("Shear rate of viscosity")
            .means("shear rate at which the viscosity of the liquor counts")
            .such("200 1/s");
    private final Field<Double> pump =
        standard("pumpEfficiency", Type.quantity(Measure.FRACTION, "10 %", "100 %"), "50 %")
            .label("Feed pump efficiency")
            .means("efficiency of the feed pump with its motor")
            .such("50 %");
    private final Field<Double> running = running();

    CycloneFields() {
      super("cyclone", "hydrocyclone");
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(values, List.of(out(values, under), out(values, over)));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      return values.made(
          body,
          () -> {
            HydrocycloneGeometry usual =
                HydrocycloneGeometry.rietema(values.get(body), values.get(apex));
            HydrocycloneGeometry geometry =
                new HydrocycloneGeometry(
                    values.get(body),
                    values.get(inlet).orElse(usual.inletM()),
                    values.get(finder).orElse(usual.overflowM()),
                    values.get(apex),
                    values.get(vortex).orElse(usual.freeVortexM()));
            return List.of(
                new CycloneUnit(
                    place(values, under, over, running),
                    new Hydrocyclone(geometry, values.get(parallel)),
                    values.get(model),
                    values.get(shear),
                    values.get(pump)));
          });
    }
  }
}
