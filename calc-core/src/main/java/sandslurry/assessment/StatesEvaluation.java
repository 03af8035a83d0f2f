package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import sandslurry.assessment.LineEvaluation.State;
import sandslurry.assessment.PumpEvaluation.Change;
import sandslurry.assessment.ServiceResult.DutyRow;
import sandslurry.assessment.StateResult.Point;
import sandslurry.assessment.StateResult.PumpPoint;
import sandslurry.assessment.StateResult.SuctionPoint;
import sandslurry.correlation.Physics;
import sandslurry.design.CarrierSpec;
import sandslurry.design.CarrierSpec.ManureSpec;
import sandslurry.design.CarrierSpec.WaterSpec;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.MotorSpec;
import sandslurry.design.PumpSpec.OtherPumpSpec;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.PumpSpec.RunningPump;
import sandslurry.design.RouteSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.StatesSpec;
import sandslurry.material.Carriers;
import sandslurry.pump.BestPoint;
import sandslurry.pump.OperatingRegion;
import sandslurry.pump.PumpCurve;
import sandslurry.pump.PumpGroup;
import sandslurry.pump.RepresentativeViscosity;
import sandslurry.pump.SolidsDerating;
import sandslurry.pump.WearIndex;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.transport.DepositionJudgement;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;
import si.uom.quantity.VolumetricFlowRate;

/** Evaluates the line in every state that it meets. */
final class StatesEvaluation {
  private static final String NO_GROUND =
      "fast enough by what is reckoned, but the correlations disagree or are out of their range";

  private static final String FLUSH = "flush with water";

  private final Design design;
  private final Materials materials;
  private final Optional<PumpResult> pump;
  private final UnitSystem units;
  private final List<Evaluated> all = new ArrayList<>();
  private final List<DutyRow> band = new ArrayList<>();

  /** What a state changes of the design. */
  private record Variant(
      String name,
      Optional<Quantity<Dimensionless>> solids,
      Optional<Quantity<Temperature>> temperature,
      Optional<Quantity<Length>> level,
      OptionalDouble worn,
      Optional<List<RunningPump>> pumps,
      PumpInLiquid.Choice choice,
      boolean flush) {
    static Variant named(String name) {
      return new Variant(
          name,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          PumpInLiquid.Choice.RULE,
          false);
    }

    Variant called(String other) {
      return new Variant(other, solids, temperature, level, worn, pumps, choice, flush);
    }

    Variant withSolids(Quantity<Dimensionless> other) {
      return new Variant(name, Optional.of(other), temperature, level, worn, pumps, choice, flush);
    }

    Variant withTemperature(Quantity<Temperature> other) {
      return new Variant(name, solids, Optional.of(other), level, worn, pumps, choice, flush);
    }

    Variant withLevel(Quantity<Length> other) {
      return new Variant(name, solids, temperature, Optional.of(other), worn, pumps, choice, flush);
    }

    Variant withWear(double share) {
      return new Variant(
          name, solids, temperature, level, OptionalDouble.of(share), pumps, choice, flush);
    }

    Variant withPumps(List<RunningPump> other) {
      return new Variant(name, solids, temperature, level, worn, Optional.of(other), choice, flush);
    }

    Variant believing(PumpInLiquid.Choice other) {
      return new Variant(name, solids, temperature, level, worn, pumps, other, flush);
    }

    Variant withWater() {
      return new Variant(name, solids, temperature, level, worn, pumps, choice, true);
    }
  }

  /** Something amiss in a state. */
  record Reason(Severity severity, String text) {}

  /** A state with what it was worked out from; no model when nothing could be. */
  record Evaluated(
      StateResult result,
      Optional<LineModel> model,
      Materials materials,
      Optional<PumpGroup> group,
      boolean flush,
      double margin) {}

  StatesEvaluation(
      Design design,
      Materials materials,
      LineModel model,
      List<State> base,
      Optional<PumpResult> pump,
      boolean everyState) {
    this.design = design;
    this.materials = materials;
    this.pump = pump;
    this.units = design.units();
    for (State state : base) {
      boolean duty = state.flowCase() == FlowCase.DUTY;
      Variant variant =
          Variant.named(state.flowCase().words() + (duty ? "" : " flow, held by control"));
      PumpEvaluation evaluation = duty ? new PumpEvaluation(design, materials, model) : null;
      all.add(
          at(
              variant,
              false,
              design,
              materials,
              model,
              state.flowM3ps(),
              Optional.ofNullable(evaluation)));
    }
    if (everyState) {
      others();
    }
  }

  List<Evaluated> all() {
    return all;
  }

  /** The worst state; of equals the one of the least margin of velocity. */
  Optional<Evaluated> governing() {
    return all.stream()
        .max(
            Comparator.comparing((Evaluated e) -> e.result().severity())
                .thenComparingDouble(e -> -e.margin()));
  }

  private void others() {
    StatesSpec spec = design.service().states().orElse(StatesSpec.NONE);
    double worn = spec.wornHead().map(Measure.FRACTION::si).orElse(0.0);
    boolean wears = worn > 0 || oneWears();
    spec.thickest().ifPresent(s -> add(Variant.named("thickest liquor").withSolids(s)));
    spec.thinnest().ifPresent(s -> add(Variant.named("thinnest liquor").withSolids(s)));
    spec.coldest().ifPresent(t -> add(Variant.named("coldest").withTemperature(t)));
    spec.warmest().ifPresent(t -> add(Variant.named("warmest").withTemperature(t)));
    spec.thickestCarrier().ifPresent(c -> add(Variant.named("thickest liquor"), with(c), none()));
    spec.thinnestCarrier().ifPresent(c -> add(Variant.named("thinnest liquor"), with(c), none()));
    spec.coldestCarrier().ifPresent(c -> add(Variant.named("coldest"), with(c), none()));
    spec.warmestCarrier().ifPresent(c -> add(Variant.named("warmest"), with(c), none()));
    spec.thickestSand().ifPresent(s -> add(Variant.named("most sand"), design, sand(s)));
    spec.thinnestSand().ifPresent(s -> add(Variant.named("least sand"), design, sand(s)));
    spec.lowSourceLevel().ifPresent(l -> add(Variant.named("pit at its lowest").withLevel(l)));
    spec.highSourceLevel().ifPresent(l -> add(Variant.named("pit at its highest").withLevel(l)));
    if (wears) {
      add(Variant.named(word() + " worn").withWear(worn));
    }
    boolean rotodynamic = design.pump().orElse(null) instanceof RotodynamicSpec;
    if (rotodynamic && design.service().states().isPresent() && sandThere()) {
      add(Variant.named(ServiceResult.LEAST_STATE).believing(PumpInLiquid.Choice.SEVEREST));
    }
    Variant worst =
        together(
            spec,
            wears ? OptionalDouble.of(worn) : OptionalDouble.empty(),
            rotodynamic && sandThere());
    if (worst != null) {
      add(worst, worstDesign(spec), spec.thickestSand().map(this::sand).orElseGet(this::none));
    }
    if (spec.flushWater()) {
      add(Variant.named(FLUSH).withWater());
    }
    if (rotodynamic) {
      stations((RotodynamicSpec) design.pump().orElseThrow(), worst);
    }
    if (design.service().states().isPresent() && design.pump().isPresent()) {
      start(wears ? OptionalDouble.of(worn) : OptionalDouble.empty());
    }
    if (rotodynamic) {
      band((RotodynamicSpec) design.pump().orElseThrow());
    }
  }

  /** Says whether a pump that runs has a share of wear of its own. */
  private boolean oneWears() {
    return design.pump().orElse(null) instanceof RotodynamicSpec spec
        && spec.pumps().stream()
            .flatMap(p -> p.wornHead().stream())
            .anyMatch(share -> Measure.FRACTION.si(share) > 0);
  }

  private String word() {
    return design.pump().orElse(null) instanceof RotodynamicSpec pump && pump.names().size() > 1
        ? "pumps"
        : "pump";
  }

  private boolean sandThere() {
    return materials.sandFraction(designFlow()) > 0;
  }

  /**
   * What takes flow, all at once, with the derating for sand that takes most head; nothing when
   * fewer than two such things are given.
   */
  private static Variant together(StatesSpec spec, OptionalDouble worn, boolean derated) {
    List<String> given = new ArrayList<>();
    if (spec.thickest().isPresent() || spec.thickestCarrier().isPresent()) {
      given.add("thickest liquor");
    }
    // Two liquids with numbers of their own cannot be one: the thickest goes before the coldest.
    if (spec.coldest().isPresent()
        || spec.coldestCarrier().isPresent() && spec.thickestCarrier().isEmpty()) {
      given.add("coldest");
    }
    spec.thickestSand().ifPresent(s -> given.add("most sand"));
    spec.lowSourceLevel().ifPresent(l -> given.add("pit at its lowest"));
    worn.ifPresent(share -> given.add("worn"));
    if (given.size() < 2) {
      return null;
    }
    if (derated) {
      given.add("sand takes most head");
    }
    Variant worst = Variant.named(String.join(", ", given) + ", all together");
    if (spec.thickest().isPresent()) {
      worst = worst.withSolids(spec.thickest().get());
    }
    if (spec.coldest().isPresent()) {
      worst = worst.withTemperature(spec.coldest().get());
    }
    if (spec.lowSourceLevel().isPresent()) {
      worst = worst.withLevel(spec.lowSourceLevel().get());
    }
    if (worn.isPresent()) {
      worst = worst.withWear(worn.getAsDouble());
    }
    return derated ? worst.believing(PumpInLiquid.Choice.SEVEREST) : worst;
  }

  /** One pump out of several, and the spare in the place of the first. */
  private void stations(RotodynamicSpec spec, Variant worst) {
    List<RunningPump> pumps = spec.pumps();
    if (pumps.size() > 1) {
      for (int i = 0; i < pumps.size(); i++) {
        // Of pumps like the first, one stands for all.
        if (i == 0 || i >= spec.station().count()) {
          List<RunningPump> others = new ArrayList<>(pumps);
          others.remove(i);
          add(Variant.named("without " + pumps.get(i).name()).withPumps(others));
        }
      }
    }
    for (OtherPumpSpec spare : spec.spares()) {
      List<RunningPump> with = spec.withSpare(spare);
      add(Variant.named(spareName(spare)).withPumps(with));
      if (worst != null) {
        StatesSpec states = design.service().states().orElse(StatesSpec.NONE);
        add(
            worst.called(spareName(spare) + ", with the worst together").withPumps(with),
            worstDesign(states),
            states.thickestSand().map(this::sand).orElseGet(this::none));
      }
    }
  }

  /**
   * The duty by every derating for sand and every viscosity of the liquid that makes a difference,
   * all else as designed.
   */
  private void band(RotodynamicSpec spec) {
    PumpInLiquid liquid =
        new PumpEvaluation(design, materials, new LineModel(design, materials)).liquid();
    List<RunningPump> pumps = spec.pumps();
    boolean thick =
        pumps.stream()
            .flatMap(pump -> liquid.viscosities(pump).stream())
            .anyMatch(seen -> !seen.correction().none());
    if (!thick && !sandThere()) {
      return;
    }
    List<Optional<SolidsDerating>> solids =
        sandThere()
            ? liquid.deratings(pumps).stream().map(Optional::of).toList()
            : List.of(Optional.empty());
    List<Optional<RepresentativeViscosity>> viscosities =
        thick && !(liquid.newtonian())
            ? Arrays.stream(RepresentativeViscosity.values()).map(Optional::of).toList()
            : List.of(Optional.empty());
    Map<Double, Double> heads = new HashMap<>();
    for (Optional<SolidsDerating> model : solids) {
      for (Optional<RepresentativeViscosity> viscosity : viscosities) {
        PumpInLiquid.Choice choice = new PumpInLiquid.Choice(model, false, viscosity);
        band.add(row(spec, choice, heads));
      }
    }
  }

  private DutyRow row(RotodynamicSpec spec, PumpInLiquid.Choice choice, Map<Double, Double> heads) {
    LineModel model = new LineModel(design, materials);
    PumpEvaluation evaluation =
        new PumpEvaluation(
            design,
            materials,
            model,
            new Change(Optional.empty(), choice, OptionalDouble.empty()),
            heads);
    RunningPump first = spec.pumps().get(0);
    PumpInLiquid liquid = evaluation.liquid();
    Optional<PumpInLiquid.Seen> seen = liquid.viscosity(first, choice);
    PumpResult result = evaluation.result();
    OptionalDouble flow =
        result
            .governing()
            .map(duty -> OptionalDouble.of(Measure.FLOW.si(duty.flow())))
            .orElseGet(OptionalDouble::empty);
    Optional<RunPoint> worst =
        flow.isPresent() && materials.flows(flow.getAsDouble())
            ? Optional.of(
                worst(model.runs(flow.getAsDouble(), materials.sandFraction(flow.getAsDouble()))))
            : Optional.empty();
    List<Reason> reasons = new ArrayList<>();
    worst.ifPresent(run -> sand(run, reasons));
    return new DutyRow(
        choice.solids().map(SolidsDerating::name),
        choice.viscosity().or(() -> seen.map(PumpInLiquid.Seen::which)),
        Measure.FRACTION.si(result.headRatio()),
        seen.map(s -> s.correction().flowRatio()).orElse(1.0),
        seen.map(s -> s.correction().efficiencyRatio()).orElse(1.0),
        flow,
        worst.map(run -> run.run().name()),
        worst
            .map(RunPoint::leastVelocityMps)
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty),
        worst
            .flatMap(RunPoint::deposition)
            .filter(d -> worst.get().regime() == Regime.TURBULENT)
            .map(d -> OptionalDouble.of(d.velocityToPassMps()))
            .orElseGet(OptionalDouble::empty),
        worst.map(RunPoint::severity).orElse(Severity.FAIL),
        choice
                .solids()
                .map(m -> m == liquid.derating(first, PumpInLiquid.Choice.RULE).model())
                .orElse(true)
            && choice
                .viscosity()
                .map(
                    v ->
                        liquid
                            .viscosity(first, PumpInLiquid.Choice.RULE)
                            .map(s -> s.which() == v)
                            .orElse(true))
                .orElse(true));
  }

  List<DutyRow> band() {
    return band;
  }

  static String spareName(OtherPumpSpec spare) {
    return spare.name() + " for pump 1";
  }

  private double designFlow() {
    return Measure.FLOW.si(design.flow().orElseThrow().design());
  }

  static boolean isFlush(StateResult state) {
    return state.name().equals(FLUSH);
  }

  private Design with(CarrierSpec carrier) {
    return design.with(carrier, design.route());
  }

  private OptionalDouble sand(Quantity<Dimensionless> fraction) {
    return OptionalDouble.of(Measure.FRACTION.si(fraction));
  }

  private OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private Design worstDesign(StatesSpec spec) {
    return spec.thickestCarrier().or(spec::coldestCarrier).map(this::with).orElse(design);
  }

  private void add(Variant variant) {
    add(variant, design, none());
  }

  /** A state of a design whose liquid or share of sand is another. */
  private void add(Variant variant, Design from, OptionalDouble sandFraction) {
    all.add(evaluate(variant, from, sandFraction));
  }

  private Evaluated evaluate(Variant variant, Design from, OptionalDouble sandFraction) {
    Design changed = changed(variant, from);
    Materials inside = Materials.of(changed);
    if (sandFraction.isPresent()) {
      inside = inside.diluted(inside.carrier(), sandFraction.getAsDouble());
    }
    if (variant.flush()) {
      double temperature = inside.carrier().temperatureK();
      inside = inside.diluted(Carriers.water(temperature), 0);
    }
    if (!inside.flows(designFlow())) {
      return failed(variant, inside, "more sand than flows as a slurry");
    }
    LineModel model = new LineModel(changed, inside);
    if (design.pump().isEmpty()) {
      return at(variant, true, changed, inside, model, designFlow(), Optional.empty());
    }
    if (design.pump().get() instanceof RotodynamicSpec spec) {
      model =
          model.withSuctionLines(
              spec.station().arrangement() == PumpGroup.Arrangement.PARALLEL
                  ? variant.pumps().orElseGet(spec::pumps).size()
                  : 1);
    }
    PumpEvaluation evaluation =
        new PumpEvaluation(
            changed, inside, model, new Change(variant.pumps(), variant.choice(), variant.worn()));
    PumpResult result = evaluation.result();
    if (result.governing().isEmpty()) {
      return failed(
          variant,
          inside,
          "no stable flow: "
              + result.absence().orElse("they meet only where the flow is not stable"));
    }
    double flow = Measure.FLOW.si(result.governing().get().flow());
    if (!inside.flows(flow)) {
      return failed(variant, inside, "more sand than flows as a slurry");
    }
    return at(variant, true, changed, inside, model, flow, Optional.of(evaluation));
  }

  private Design changed(Variant variant, Design from) {
    CarrierSpec carrier = from.carrier();
    Quantity<Temperature> temperature = variant.temperature().orElse(carrier.temperature());
    if (carrier instanceof ManureSpec manure) {
      carrier = new ManureSpec(temperature, variant.solids().orElse(manure.totalSolids()));
    } else if (carrier instanceof WaterSpec) {
      carrier = new WaterSpec(temperature);
    }
    RouteSpec route = design.route().orElseThrow();
    return design.with(
        carrier,
        Optional.of(
            new RouteSpec(
                variant.level().orElse(route.sourceLevel()), route.outletHead(), route.runs())));
  }

  private static Evaluated failed(Variant variant, Materials inside, String why) {
    return new Evaluated(
        new StateResult(variant.name(), true, Severity.FAIL, List.of(why), Optional.empty()),
        Optional.empty(),
        inside,
        Optional.empty(),
        variant.flush(),
        0);
  }

  private Evaluated at(
      Variant variant,
      boolean asked,
      Design changed,
      Materials inside,
      LineModel model,
      double flow,
      Optional<PumpEvaluation> evaluation) {
    double fraction = inside.sandFraction(flow);
    List<RunPoint> runs = model.runs(flow, fraction);
    RunPoint worst = worst(runs);
    List<Reason> reasons = new ArrayList<>();
    sand(worst, reasons);
    double pressure = pressure(changed, inside, model, flow, reasons);
    if (variant.flush()) {
      flush(inside, changed, flow, reasons);
    }
    double density = inside.mixtureDensityKgM3(fraction);
    List<PumpPoint> pumps = new ArrayList<>();
    Optional<PumpGroup> group = Optional.empty();
    double drive = design.pump().map(p -> Measure.FRACTION.si(p.driveEfficiency())).orElse(1.0);
    if (evaluation.isPresent()) {
      if (design.pump().orElseThrow() instanceof RotodynamicSpec spec) {
        group = evaluation.get().derated(spec);
        pumps.addAll(
            rotodynamic(spec, evaluation.get(), group.orElseThrow(), changed, inside, model, flow));
        drive = PumpEvaluation.drive(evaluation.get().pumps(spec), group.orElseThrow().parts(flow));
      } else {
        pumps.add(piston(variant, changed, inside, model, flow));
      }
      pumps.forEach(p -> judge(p, reasons));
    }
    double shaft = pumps.stream().mapToDouble(PumpPoint::shaftW).sum();
    reasons.sort(Comparator.comparing(Reason::severity).reversed());
    Severity severity = reasons.stream().map(Reason::severity).reduce(Severity.PASS, Severity::or);
    boolean driven = evaluation.isPresent();
    Point point =
        new Point(
            flow,
            fraction,
            density,
            inside.carrier().temperatureK(),
            group.isPresent()
                ? model.systemHeadM(runs, PumpEvaluation.greatestShareM3ps(group.get(), flow))
                : model.systemHeadM(runs),
            worst.run().name(),
            worst.regime(),
            worst.leastVelocityMps(),
            worst
                .deposition()
                .filter(d -> worst.regime() == Regime.TURBULENT)
                .map(d -> OptionalDouble.of(d.limitMps()))
                .orElseGet(OptionalDouble::empty),
            worst
                .deposition()
                .filter(d -> worst.regime() == Regime.TURBULENT)
                .map(d -> OptionalDouble.of(d.velocityToPassMps()))
                .orElseGet(OptionalDouble::empty),
            pressure,
            driven,
            driven ? OptionalDouble.of(shaft) : OptionalDouble.empty(),
            driven ? OptionalDouble.of(shaft / drive) : OptionalDouble.empty(),
            WearIndex.of(flow, designFlow()),
            pumps);
    return new Evaluated(
        new StateResult(
            variant.name(),
            asked,
            severity,
            reasons.stream().map(Reason::text).toList(),
            Optional.of(point)),
        Optional.of(model),
        inside,
        group,
        variant.flush(),
        worst.margin());
  }

  private static RunPoint worst(List<RunPoint> runs) {
    return runs.stream()
        .max(Comparator.comparing(RunPoint::severity).thenComparingDouble(r -> -r.margin()))
        .orElseThrow();
  }

  private void sand(RunPoint worst, List<Reason> reasons) {
    if (worst.severity() == Severity.PASS) {
      return;
    }
    String name = worst.run().name();
    if (worst.regime() != Regime.TURBULENT) {
      reasons.add(
          new Reason(
              worst.severity(),
              "sand in "
                  + name
                  + ": the liquid flows "
                  + worst.regime().words()
                  + ", so turbulence does not carry it"));
      return;
    }
    DepositionJudgement judged = worst.deposition().orElseThrow();
    double limit = judged.limitMps();
    double pass = judged.velocityToPassMps();
    if (worst.leastVelocityMps() >= pass) {
      reasons.add(new Reason(worst.severity(), "sand in " + name + ": " + NO_GROUND));
      return;
    }
    boolean below = worst.leastVelocityMps() < limit;
    reasons.add(
        new Reason(
            worst.severity(),
            (below
                    ? judged.governed() ? "sand settles in " : "sand may settle in "
                    : "sand lacks margin in ")
                + name
                + ": "
                + units.show(Kind.VELOCITY, worst.leastVelocityMps())
                + " against "
                + units.show(Kind.VELOCITY, below ? limit : pass)));
  }

  private double pressure(
      Design changed, Materials inside, LineModel model, double flow, List<Reason> reasons) {
    LineState shown = LineEvaluation.at(changed, inside, model, FlowCase.DUTY, flow);
    double share = Measure.FRACTION.si(design.criteria().pressureShare());
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < shown.runs().size(); i++) {
      RunState run = shown.runs().get(i);
      RunSpec spec = model.route().runs().get(i);
      double here =
          Math.max(
              Measure.PRESSURE.si(run.startPressure()), Measure.PRESSURE.si(run.endPressure()));
      greatest = Math.max(greatest, here);
      OptionalDouble rating = spec.ratingPa(inside.carrier().temperatureK());
      if (rating.isPresent() && here > share * rating.getAsDouble()) {
        boolean over = here > rating.getAsDouble();
        reasons.add(
            new Reason(
                over ? Severity.FAIL : Severity.CAUTION,
                spec.name()
                    + (over ? " is above its rating: " : " is near its rating: ")
                    + units.show(Kind.PRESSURE, here)
                    + " of "
                    + units.show(Kind.PRESSURE, rating.getAsDouble())));
      }
    }
    return greatest;
  }

  /** The pump may flush faster or slower than a bed asks. */
  private void flush(Materials water, Design changed, double flow, List<Reason> reasons) {
    OptionalDouble clearing = StopEvaluation.clearingFlowM3ps(changed, materials, designFlow());
    if (clearing.isEmpty() || flow < clearing.getAsDouble()) {
      reasons.add(
          new Reason(
              Severity.CAUTION,
              "with water at "
                  + units.show(Kind.TEMPERATURE, water.carrier().temperatureK())
                  + " the pump gives "
                  + units.show(Kind.FLOW, flow)
                  + ", and a bed of this sand clears "
                  + (clearing.isEmpty()
                      ? "at no flow"
                      : "from " + units.show(Kind.FLOW, clearing.getAsDouble()))));
    }
  }

  private List<PumpPoint> rotodynamic(
      RotodynamicSpec spec,
      PumpEvaluation evaluation,
      PumpGroup group,
      Design changed,
      Materials inside,
      LineModel model,
      double flow) {
    double fraction = inside.sandFraction(flow);
    double density = inside.mixtureDensityKgM3(fraction);
    List<PumpGroup.Part> parts = group.parts(flow);
    List<PumpPoint> points = new ArrayList<>();
    boolean series = spec.station().arrangement() == PumpGroup.Arrangement.SERIES;
    List<RunningPump> pumps = evaluation.pumps(spec);
    for (int i = 0; i < parts.size(); i++) {
      PumpGroup.Part part = parts.get(i);
      PumpCurve curve = group.pumps().get(i);
      RunningPump pump = pumps.get(i);
      boolean runs = part.flowM3ps() > 0 && part.efficiency() > 0;
      double shaft =
          runs
              ? density
                  * Physics.GRAVITY
                  * part.flowM3ps()
                  * Math.max(part.headM(), 0)
                  / part.efficiency()
              : 0;
      Optional<BestPoint> best = PumpInLiquid.best(pump);
      // Of pumps in series only the first draws from the pit.
      boolean draws = part.flowM3ps() > 0 && !(series && i > 0);
      Optional<SuctionPoint> suction =
          draws
              ? SuctionEvaluation.at(
                  changed,
                  inside,
                  model,
                  part.flowM3ps(),
                  fraction,
                  SuctionEvaluation.Need.of(
                      pump,
                      evaluation
                          .liquid()
                          .viscosity(pump, evaluation.choice())
                          .map(PumpInLiquid.Seen::correction)))
              : Optional.empty();
      points.add(
          new PumpPoint(
              pump.name(),
              part.flowM3ps(),
              part.headM(),
              part.efficiency(),
              curve.headM(curve.leastFlowM3ps()),
              shaft,
              best.isPresent()
                  ? OptionalDouble.of(best.get().specificSpeed())
                  : OptionalDouble.empty(),
              best.map(b -> region(spec, curve, b)),
              pump.motor(),
              suction));
    }
    return points;
  }

  private static OperatingRegion region(RotodynamicSpec spec, PumpCurve curve, BestPoint best) {
    return OperatingRegion.common(curve.bestEfficiencyFlowM3ps(), best.specificSpeed())
        .within(flow(spec.station().minimumFlow()), flow(spec.station().maximumFlow()));
  }

  private static OptionalDouble flow(Optional<Quantity<VolumetricFlowRate>> given) {
    return given.isPresent()
        ? OptionalDouble.of(Measure.FLOW.si(given.get()))
        : OptionalDouble.empty();
  }

  private PumpPoint piston(
      Variant variant, Design changed, Materials inside, LineModel model, double flow) {
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    double fraction = inside.sandFraction(flow);
    double head = model.systemHeadM(flow, fraction);
    double efficiency =
        Measure.FRACTION.si(spec.mechanicalEfficiency())
            * Measure.FRACTION.si(spec.volumetricEfficiency())
            * (1 - variant.worn().orElse(0));
    double shaft =
        inside.mixtureDensityKgM3(fraction)
            * Physics.GRAVITY
            * flow
            * Math.max(head, 0)
            / efficiency;
    return new PumpPoint(
        "pump 1",
        flow,
        head,
        efficiency,
        head,
        shaft,
        OptionalDouble.empty(),
        Optional.empty(),
        spec.motor(),
        SuctionEvaluation.at(
            changed, inside, model, flow, fraction, SuctionEvaluation.Need.of(spec)));
  }

  private void judge(PumpPoint pump, List<Reason> reasons) {
    if (pump.flowM3ps() == 0) {
      reasons.add(
          new Reason(
              Severity.CAUTION,
              pump.name() + " stands shut: the others keep its valve closed, and it heats up"));
    } else if (pump.region().isPresent()) {
      region(pump, pump.region().get(), reasons);
    }
    pump.suction().ifPresent(suction -> suction(pump, suction, reasons));
    pump.motor().ifPresent(motor -> motor(pump, motor, reasons));
  }

  private void region(PumpPoint pump, OperatingRegion region, List<Reason> reasons) {
    OperatingRegion.Place place = region.place(pump.flowM3ps());
    if (!place.allowable()) {
      reasons.add(
          new Reason(
              Severity.CAUTION,
              pump.name()
                  + " works "
                  + place.words()
                  + ": "
                  + units.show(Kind.FLOW, pump.flowM3ps())
                  + ", "
                  + units.show(Kind.PERCENT, pump.flowM3ps() / region.bestFlowM3ps())
                  + " of its best"));
    }
  }

  private void suction(PumpPoint pump, SuctionPoint suction, List<Reason> reasons) {
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      double needed = suction.margin().neededM(required);
      if (suction.availableM() < needed) {
        boolean cavitates = suction.availableM() < required;
        reasons.add(
            new Reason(
                cavitates ? Severity.FAIL : Severity.CAUTION,
                pump.name()
                    + (cavitates ? " cavitates: NPSH " : " lacks NPSH margin: ")
                    + units.show(Kind.HEAD, suction.availableM())
                    + " of "
                    + units.show(Kind.HEAD, cavitates ? required : needed)));
      }
    } else if (suction.availableM() < 0) {
      reasons.add(
          new Reason(
              Severity.FAIL, pump.name() + " cannot be fed: the liquid boils in its suction line"));
    }
    if (suction.severity().compareTo(Severity.PASS) > 0) {
      reasons.add(
          new Reason(
              suction.severity(),
              "sand in the suction line of "
                  + pump.name()
                  + ": "
                  + units.show(Kind.VELOCITY, suction.velocityMps())
                  + (suction.fastEnough()
                      ? ", " + NO_GROUND
                      : suction.toPassMps().isPresent()
                          ? " against "
                              + units.show(Kind.VELOCITY, suction.toPassMps().getAsDouble())
                          : ", not turbulent")));
    }
  }

  private void motor(PumpPoint pump, MotorSpec motor, List<Reason> reasons) {
    double rating = Measure.POWER.si(motor.rating());
    double most = rating * Measure.FRACTION.si(motor.serviceFactor());
    if (pump.shaftW() > rating) {
      boolean over = pump.shaftW() > most;
      reasons.add(
          new Reason(
              over ? Severity.FAIL : Severity.CAUTION,
              pump.name()
                  + (over
                      ? " overloads its motor: "
                      : " works in the service factor of its motor: ")
                  + units.show(Kind.POWER, pump.shaftW())
                  + " of "
                  + units.show(Kind.POWER, rating)));
    }
  }

  /** The line full and at rest: what the pump must lift and break before anything flows. */
  private void start(OptionalDouble worn) {
    LineModel model = new LineModel(design, materials);
    double fraction = materials.sandFraction(designFlow());
    double weight = materials.mixtureDensityKgM3(fraction) * Physics.GRAVITY;
    double yield = 0;
    for (RunPoint run : model.runs(designFlow(), fraction)) {
      yield +=
          4
              * run.rheology().yieldStressPa()
              / run.mean().diameterM()
              * Measure.LENGTH.si(run.run().length());
    }
    double needed = model.staticHeadM() + yield / weight;
    double available;
    if (design.pump().orElseThrow() instanceof RotodynamicSpec spec) {
      Optional<PumpGroup> group =
          new PumpEvaluation(
                  design,
                  materials,
                  model,
                  new Change(Optional.empty(), PumpInLiquid.Choice.RULE, worn))
              .derated(spec);
      available = group.map(g -> g.headM(g.leastFlowM3ps())).orElse(0.0);
    } else {
      available =
          Measure.PRESSURE.si(((PistonSpec) design.pump().orElseThrow()).pressureLimit()) / weight;
    }
    boolean fails = !(available > needed);
    String numbers =
        "needs "
            + units.show(Kind.HEAD, needed)
            + " of mixture before it moves, and "
            + word()
            + (worn.isPresent() ? ", worn, " : " ")
            + "can give "
            + units.show(Kind.HEAD, available);
    all.add(
        new Evaluated(
            new StateResult(
                "start against the full line, sand still in suspension",
                true,
                fails ? Severity.FAIL : Severity.PASS,
                List.of(numbers),
                Optional.empty()),
            Optional.of(model),
            materials,
            Optional.empty(),
            false,
            Double.MAX_VALUE));
  }

  /** What would mend a state, in numbers. */
  String cure(Evaluated state) {
    if (state.result().severity().compareTo(Severity.PASS) <= 0) {
      return "";
    }
    if (state.model().isEmpty()) {
      return pump.isPresent()
          ? "Choose a pump whose curve meets the line in this state too, or keep the line out of it."
          : "Keep the line out of this state.";
    }
    LineModel model = state.model().get();
    double most = 0;
    for (RunSpec run : model.route().runs()) {
      OptionalDouble flow = model.leastSafeFlowM3ps(run);
      if (flow.isEmpty()) {
        return "No flow through " + run.name() + " keeps its sand moving in this state.";
      }
      most = Math.max(most, flow.getAsDouble());
    }
    Optional<Point> point = state.result().point();
    if (point.isEmpty() || point.get().flowM3ps() >= most) {
      return "Mend what is named there; the finding of that part has its number.";
    }
    double fraction = state.materials().sandFraction(most);
    double head = model.systemHeadM(most, fraction);
    StringBuilder text =
        new StringBuilder("In this state the line needs ")
            .append(units.show(Kind.FLOW, most))
            .append(" at ")
            .append(units.show(Kind.HEAD, head))
            .append(" of mixture");
    if (state.group().isPresent() && head > 0) {
      OptionalDouble ratio = state.group().get().speedRatio(most, head);
      double speed =
          Measure.FREQUENCY.si(((RotodynamicSpec) design.pump().orElseThrow()).first().speed());
      if (ratio.isPresent()) {
        text.append("; a drive speed of ")
            .append(units.show(Kind.FREQUENCY, ratio.getAsDouble() * speed))
            .append(" in place of ")
            .append(units.show(Kind.FREQUENCY, speed))
            .append(" would give it (check motor, NPSH and the maker's greatest speed)");
      } else {
        text.append("; no speed of these pumps gives that");
      }
    } else if (design.pump().orElse(null) instanceof PistonSpec piston && point.get().driven()) {
      double rate = Measure.FREQUENCY.si(piston.strokeRate()) * most / point.get().flowM3ps();
      text.append("; ").append(units.show(Kind.FREQUENCY, rate)).append(" strokes would give it");
    }
    return text.append('.').toString();
  }
}
