package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpEvaluation.Change;
import sandslurry.assessment.station.PumpInLiquid;
import sandslurry.assessment.station.StateResult;
import sandslurry.correlation.Physics;
import sandslurry.design.station.PumpSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/** Evaluates the line in every state that it meets. */
public final class StatesEvaluation {
  /** Share of its head that a worn pump has lost, where none is given (common practice). */
  static final double COMMON_WEAR = 0.10;

  private final List<Evaluated> all = new ArrayList<>();
  private List<DutyRow> band = List.of();
  private Optional<Evaluated> worn = Optional.empty();

  /**
   * The states of a design.
   *
   * @param model the physics of its line
   * @param base the flows of the line, each a state of its own
   * @param everyState whether the states beside them are evaluated too
   */
  public StatesEvaluation(LineModel model, List<State> base, boolean everyState) {
    for (State state : base) {
      boolean duty = state.flowCase() == FlowCase.DUTY;
      StateVariant variant =
          StateVariant.named(
              state.flowCase().words() + (duty ? "" : " flow, held by control"), model.design());
      all.add(
          new StateEvaluation(variant, model.materials(), model, state.flowM3ps())
              .evaluated(false, duty ? Optional.of(new PumpEvaluation(model)) : Optional.empty()));
    }
    if (everyState) {
      others(model);
    }
  }

  /**
   * Every state.
   *
   * @return the flow rates first, then the states that the design asks for
   */
  public List<Evaluated> all() {
    return all;
  }

  /**
   * Duty points over the range of sand, wear and liquid.
   *
   * @return rows of the table; empty without a rotodynamic pump
   */
  public List<DutyRow> band() {
    return band;
  }

  /**
   * The state that governs: the worst, and of equals the one of the least velocity margin.
   *
   * @return the state; empty when there is none
   */
  public Optional<Evaluated> governing() {
    return all.stream()
        .max(
            Comparator.comparing((Evaluated e) -> e.result().severity())
                .thenComparingDouble(e -> -e.margin()));
  }

  private void others(LineModel model) {
    double designFlow = model.design().oneLine().flow().designM3ps();
    StateVariants variants =
        new StateVariants(model.design(), model.materials().sandFraction(designFlow) > 0);
    for (StateVariant variant : variants.all()) {
      all.add(StateEvaluation.of(variant, true, model));
    }
    if (model.design().pump().isPresent()) {
      unnamed(variants, model, model.materials().sandFraction(designFlow) > 0);
    }
    if (model.design().service().states().isPresent() && model.design().pump().isPresent()) {
      all.add(start(variants, model));
    }
    band =
        model
            .design()
            .pump()
            .flatMap(PumpSpec::rotodynamic)
            .map(spec -> new DutyBandEvaluation(model, spec).rows())
            .orElse(band);
  }

  /** Every pump wears, and at times no sand comes: the flow rate is then the least, or the most. */
  private void unnamed(StateVariants variants, LineModel model, boolean sand) {
    if (variants.worn().isEmpty()) {
      StateVariant variant =
          StateVariant.named(variants.word() + " worn, as is common", model.design())
              .withWear(COMMON_WEAR);
      worn = Optional.of(StateEvaluation.of(variant, false, model));
      all.add(worn.get());
    }
    if (sand && model.design().pump().orElseThrow().rotodynamic().isPresent()) {
      all.add(
          StateEvaluation.of(
              StateVariant.named("liquid without sand", model.design()).withSand(0), false, model));
    }
  }

  /** Whether the line itself, with its pump as new, carries its sand at every flow rate judged. */
  boolean carriesUnnamed() {
    return all.stream()
        .filter(e -> !e.result().named() && !worn.filter(w -> w == e).isPresent())
        .allMatch(e -> e.margin() >= 1);
  }

  /**
   * The pumps worn by as much as is common.
   *
   * @return the state; empty without a pump, or where its wear is given
   */
  public Optional<Evaluated> worn() {
    return worn;
  }

  /** The line full and at rest: what the pump must lift and break before anything flows. */
  private Evaluated start(StateVariants variants, LineModel model) {
    OptionalDouble worn = variants.worn();
    double designFlow = model.design().oneLine().flow().designM3ps();
    double fraction = model.materials().sandFraction(designFlow);
    double weight = model.materials().mixtureDensityKgM3(fraction) * Physics.GRAVITY;
    double yield = 0;
    for (RunPoint run : model.runs(designFlow, fraction)) {
      yield +=
          4
              * run.mixture().rheology().yieldStressPa()
              / run.pipe().mean().diameterM()
              * run.pipe().spec().lengthM();
    }
    double needed = model.staticHeadM() + yield / weight;
    double available =
        model
            .design()
            .pump()
            .orElseThrow()
            .match(
                spec ->
                    new PumpEvaluation(
                            model, new Change(Optional.empty(), PumpInLiquid.Choice.RULE, worn))
                        .derated(spec)
                        .map(group -> group.headM(group.leastFlowM3ps()))
                        .orElse(0.0),
                spec -> spec.pressureLimitPa() / weight);
    boolean fails = !(available > needed);
    String numbers =
        "needs "
            + model.design().units().show(Kind.HEAD, needed)
            + " of mixture before it moves, and "
            + variants.word()
            + (worn.isPresent() ? ", worn, " : " ")
            + "can give "
            + model.design().units().show(Kind.HEAD, available);
    return new Evaluated(
        new StateResult(
            "start against the full line, sand still in suspension",
            true,
            fails ? Severity.FAIL : Severity.PASS,
            List.of(numbers),
            Optional.empty()),
        Optional.of(model),
        model.materials(),
        Optional.empty(),
        Double.MAX_VALUE);
  }
}
