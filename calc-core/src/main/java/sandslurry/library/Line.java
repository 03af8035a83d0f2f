package sandslurry.library;

import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.Design;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** A line of one or more runs of standard pipe, and what it carries. Immutable. */
public final class Line {
  private final DesignDraft parts;
  private final StandardPipe first;
  private RunPoint worst;
  private LineModel model;
  private double slowestMps = Double.POSITIVE_INFINITY;
  private double fastestMps = Double.NEGATIVE_INFINITY;

  private Line(DesignDraft parts, StandardPipe first) {
    this.parts = parts;
    this.first = first;
  }

  /**
   * A standard pipe.
   *
   * @param system its standard, such as {@code ASME B36.10M}
   * @param size its nominal size, such as {@code 6 in}
   * @param wallClass its class, such as {@code Sch 40}
   * @return the pipe
   * @throws IllegalArgumentException if the catalogue has no such pipe
   */
  public static StandardPipe pipe(String system, String size, String wallClass) {
    return PipeCatalogue.get(system, size, wallClass);
  }

  /**
   * A line that begins with a pipe.
   *
   * @param pipe the pipe of its first run
   * @return the line; its length is still to be given
   */
  public static Line of(StandardPipe pipe) {
    return new Line(DesignDraft.titled("line"), pipe).then(pipe);
  }

  /**
   * Adds a run after the last.
   *
   * @param pipe its pipe
   * @return the longer line
   */
  public Line then(StandardPipe pipe) {
    String run = "/lines/0/route/runs/" + parts.size("/lines/0/route/runs");
    return new Line(
        parts
            .with(run + "/pipe/system", pipe.system().standard())
            .with(run + "/pipe/size", pipe.size())
            .with(run + "/pipe/class", pipe.wallClass()),
        first);
  }

  /**
   * Gives the last run its length.
   *
   * @param length length along the pipe
   * @return the line
   */
  public Line length(Quantity<Length> length) {
    return with("/length", length);
  }

  /**
   * Gives the last run its rise.
   *
   * @param rise height of its end above its start; negative when it falls
   * @return the line
   */
  public Line rise(Quantity<Length> rise) {
    return with("/rise", rise);
  }

  /**
   * Gives the last run a wall that is not new.
   *
   * @param roughness roughness of the wall
   * @return the line
   */
  public Line roughness(Quantity<Length> roughness) {
    return with("/roughness", roughness);
  }

  /**
   * Adds fittings to the last run.
   *
   * @param kind what they are
   * @param count how many
   * @return the line
   */
  public Line fittings(FittingKind kind, int count) {
    String list = last() + "/fittings";
    String entry = list + "/" + parts.size(list);
    return new Line(
        parts.with(entry + "/kind", kind.id()).with(entry + "/count", String.valueOf(count)),
        first);
  }

  /**
   * Says what the line carries.
   *
   * @param mixture the mixture
   * @return the line full of it
   */
  public Line carrying(Mixture mixture) {
    return new Line(mixture.in(parts), first);
  }

  private String last() {
    return "/lines/0/route/runs/" + (parts.size("/lines/0/route/runs") - 1);
  }

  private Line with(String field, Quantity<Length> length) {
    return new Line(parts.with(last() + field, Measure.LENGTH, length), first);
  }

  DesignDraft in(DesignDraft design) {
    DesignDraft whole = design.part("/lines/0/route", parts);
    for (String part : List.of("/sand", "/carrier", "/lines/0/mixture")) {
      whole = whole.part(part, parts);
    }
    return whole;
  }

  Design design(Quantity<Speed> velocity) {
    return parts.with("/lines/0/flow/design", Measure.FLOW, flowRate(velocity)).design();
  }

  /** The line at one flow rate, with nothing worked out that was not asked for. */
  private record At(LineModel model, List<RunPoint> runs) {}

  private At at(Quantity<Speed> velocity) {
    LineModel line = checked(velocity);
    Materials materials = line.materials();
    double flow = Measure.FLOW.si(flowRate(velocity));
    return new At(
        line, materials.flows(flow) ? line.runs(flow, materials.sandFraction(flow)) : List.of());
  }

  /**
   * The physics of the line, the same at any velocity. The limits of a flow rate are an interval,
   * so that of velocities between two that were checked none needs to be read.
   */
  private LineModel checked(Quantity<Speed> velocity) {
    double mps = Measure.SPEED.si(velocity);
    if (!(mps >= slowestMps && mps <= fastestMps)) {
      Design design = design(velocity);
      model = model == null ? new LineModel(Materials.of(design)) : model;
      slowestMps = Math.min(slowestMps, mps);
      fastestMps = Math.max(fastestMps, mps);
    }
    return model;
  }

  /** Worked out once: its velocities of deposition do not depend on the flow rate. */
  private synchronized RunPoint worst() {
    if (worst == null) {
      worst =
          at(Amounts.mps(1)).runs().stream()
              .max(Comparator.comparingDouble(Line::limitMps))
              .orElseThrow();
    }
    return worst;
  }

  private static double limitMps(RunPoint run) {
    return run.deposition().map(DepositionJudgement::limitMps).orElse(0.0);
  }

  /**
   * The velocity below which sand settles in the worst run, by the rule that judges designs.
   *
   * @return the deposition velocity; zero without sand
   * @throws DesignProblems if the line is incomplete or outside its limits
   */
  public Quantity<Speed> depositionVelocity() {
    return Measure.SPEED.of(limitMps(worst()));
  }

  /**
   * The deposition velocity with its margin.
   *
   * @return the required velocity of the worst run; zero without sand
   * @throws DesignProblems if the line is incomplete or outside its limits
   */
  public Quantity<Speed> requiredVelocity() {
    return Measure.SPEED.of(worst().deposition().map(d -> d.velocityToPassMps()).orElse(0.0));
  }

  /**
   * The deposition velocity in the worst run by every published correlation.
   *
   * @return one value an author, with range and source; none without sand
   * @throws DesignProblems if the line is incomplete or outside its limits
   */
  public List<ByAuthor<Speed>> deposition() {
    return worst().depositionModels().stream()
        .map(entry -> ByAuthor.of(entry.model(), entry.estimate(), Measure.SPEED))
        .toList();
  }

  /**
   * The head that the line loses and lifts at a velocity.
   *
   * @param velocity mean velocity in the first run
   * @return the head
   * @throws DesignProblems if the line is incomplete or outside its limits
   */
  public synchronized HeadLoss headLoss(Quantity<Speed> velocity) {
    At state = at(velocity);
    return new HeadLoss(
        Measure.LENGTH.of(state.model().systemHeadM(state.runs())),
        state.runs().get(0).headLosses().stream()
            .map(one -> ByAuthor.of(one.model(), one.estimate(), Measure.FRACTION))
            .toList());
  }

  /**
   * The flow rate at which the first run has a velocity.
   *
   * @param velocity mean velocity
   * @return the flow rate
   */
  public Quantity<VolumetricFlowRate> flowRate(Quantity<Speed> velocity) {
    double bore = first.meanBoreM();
    return Measure.FLOW.of(Measure.SPEED.si(velocity) * Math.PI / 4 * bore * bore);
  }
}
