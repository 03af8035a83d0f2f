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
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpEvaluation.Change;
import sandslurry.assessment.station.PumpInLiquid;
import sandslurry.assessment.station.StateResult;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** Evaluates the line in every state that it meets. */
public final class StatesEvaluation {
  private final Design design;
  private final Materials materials;
  private final List<Evaluated> all = new ArrayList<>();
  private List<DutyRow> band = List.of();

  /**
   * The states of a design.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param model the physics of its line
   * @param base the flows of the line, each a state of its own
   * @param everyState whether the states beside them are evaluated too
   */
  public StatesEvaluation(
      Design design, Materials materials, LineModel model, List<State> base, boolean everyState) {
    this.design = design;
    this.materials = materials;
    for (State state : base) {
      boolean duty = state.flowCase() == FlowCase.DUTY;
      StateVariant variant =
          StateVariant.named(
              state.flowCase().words() + (duty ? "" : " flow, held by control"), design);
      all.add(
          new StateEvaluation(variant, materials, materials, model, state.flowM3ps())
              .evaluated(
                  false,
                  duty
                      ? Optional.of(new PumpEvaluation(design, materials, model))
                      : Optional.empty()));
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
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    StateVariants variants = new StateVariants(design, materials.sandFraction(designFlow) > 0);
    for (StateVariant variant : variants.all()) {
      all.add(StateEvaluation.of(variant, materials, model));
    }
    if (design.service().states().isPresent() && design.pump().isPresent()) {
      all.add(start(variants, model));
    }
    if (design.pump().orElse(null) instanceof RotodynamicSpec spec) {
      band = new DutyBandEvaluation(design, materials, model, spec).rows();
    }
  }

  /** The line full and at rest: what the pump must lift and break before anything flows. */
  private Evaluated start(StateVariants variants, LineModel model) {
    OptionalDouble worn = variants.worn();
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    double fraction = materials.sandFraction(designFlow);
    double weight = materials.mixtureDensityKgM3(fraction) * Physics.GRAVITY;
    double yield = 0;
    for (RunPoint run : model.runs(designFlow, fraction)) {
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
            + design.units().show(Kind.HEAD, needed)
            + " of mixture before it moves, and "
            + variants.word()
            + (worn.isPresent() ? ", worn, " : " ")
            + "can give "
            + design.units().show(Kind.HEAD, available);
    return new Evaluated(
        new StateResult(
            "start against the full line, sand still in suspension",
            true,
            fails ? Severity.FAIL : Severity.PASS,
            List.of(numbers),
            Optional.empty()),
        Optional.of(model),
        materials,
        Optional.empty(),
        Double.MAX_VALUE);
  }
}
