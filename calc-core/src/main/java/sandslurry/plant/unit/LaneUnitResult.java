package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.Figure;
import sandslurry.plant.Stream;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.LaminarChannel;
import sandslurry.separation.lane.LaneDeposit;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneTurn;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * What a lane of a plant does at a balance.
 *
 * @param unit the lane
 * @param stream what flows in on the average of the day
 * @param feed what enters while it runs
 * @param organic how the fibre settles in that feed
 * @param porosity pores over bulk volume of the deposit
 * @param filling how it fills from its clean floor on, by the expected outlook
 */
public record LaneUnitResult(
    LaneUnit unit,
    Stream stream,
    UnitFeed feed,
    OrganicMatter organic,
    double porosity,
    LaneFilling filling)
    implements UnitResult {
  /**
   * Water that runs out of medium sand over its bulk volume (specific yield, Johnson 1967, US
   * Geological Survey Water-Supply Paper 1662-D, read as a later page copies it: 0.26, of 0.15 to
   * 0.32).
   */
  private static final double DRAINABLE = 0.26;

  /** A lane counts as drained when the water in its sand has fallen to this share. */
  private static final double DRAINED_TO = 0.1;

  /**
   * A lane that is dug more often than this is hardly run by anybody (common practice, no source).
   */
  private static final double SHORT_INTERVAL_D = 1;

  static LaneUnitResult of(
      LaneUnit unit, Conditions c, Stream stream, UnitFeed feed, double share) {
    OrganicMatter organic = c.organic(feed);
    return new LaneUnitResult(
        unit,
        stream,
        feed,
        organic,
        c.porosity(),
        LaneFilling.of(
            unit.reaches(),
            feed,
            organic,
            share,
            c.porosity(),
            Outlook.LIKELY,
            LaneFilling.LEAST_KEPT));
  }

  @Override
  public Optional<LaneUnitResult> lane() {
    return Optional.of(this);
  }

  private LaneFilling.Point clean() {
    return filling.points().get(0);
  }

  private LaneFilling.Point last() {
    return filling.points().get(filling.points().size() - 1);
  }

  /** The lanes needed in turn while one fills, drains and is dug out; empty if none fills. */
  private Optional<LaneTurn> turn() {
    return filling.intervalS().isPresent() && filling.intervalS().getAsDouble() > 0
        ? Optional.of(new LaneTurn(filling.intervalS().getAsDouble(), unit.drainS(), unit.digS()))
        : Optional.empty();
  }

  /** Sand of one clean-out [kg]. */
  private double dugKg() {
    return filling.depositedKg().stream().mapToDouble(Double::doubleValue).sum();
  }

  private SandStack heap(double sandKg) {
    return new SandStack(sandKg, constituents().sandDensityKgM3(), porosity);
  }

  /** All sand in the stack at once: every clean-out within the time in the stack. */
  private SandStack stack() {
    double times = turn().map(turn -> Math.max(1, unit.stackS() / turn.fillS())).orElse(1.0);
    return heap(dugKg() * times);
  }

  private Constituents constituents() {
    return stream.constituents();
  }

  private double permeabilityMps() {
    return SandStack.permeabilityMps(d10M()).value();
  }

  /** Least time in which the water in the lane full of clean sand falls to a tenth [s]. */
  private double drainS() {
    return deepestM() > 0
        ? SandStack.laneDrainTimeS(
            unit.drainPathM(), deepestM(), DRAINABLE, permeabilityMps(), DRAINED_TO)
        : 0;
  }

  /** The thickest deposit at the end. */
  private double deepestM() {
    return last().depositsM().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** Size that a tenth of what lies in the lane is finer than, between the bounds of its class. */
  private double d10M() {
    List<SizeClass> classes = constituents().sandClasses();
    double all = dugKg();
    double below = 0;
    for (int k = 0; k < classes.size(); k++) {
      double here = filling.depositedKg().get(k) / all;
      if (here > 0 && below + here >= 0.1) {
        SizeClass size = classes.get(k);
        return size.lowM() * Math.pow(size.highM() / size.lowM(), (0.1 - below) / here);
      }
      below += here;
    }
    return classes.get(classes.size() - 1).highM();
  }

  @Override
  public List<Figure> figures() {
    Figures figures = new Figures().feed(stream, feed);
    figures.band("share of its sand that it keeps at this filling", keptAtFilling());
    figures
        .add("velocity, clean", Kind.VELOCITY, clean().velocitiesMps().get(0))
        .add("velocity at the end", Kind.VELOCITY, last().velocitiesMps().get(0))
        .add("sand kept, clean", Kind.PERCENT, clean().recovery())
        .add("sand kept at the end", Kind.PERCENT, filling.lastRecovery())
        .add("sand kept from clean to clean-out", Kind.PERCENT, filling.meanRecovery());
    filling
        .intervalS()
        .ifPresent(interval -> figures.add("clean-out interval", Kind.DAYS, interval));
    turn().ifPresent(turn -> figures.add("lanes needed in turn", Kind.NUMBER, turn.lanesNeeded()));
    SandStack heap = heap(dugKg());
    figures
        .add("heap of one clean-out", Kind.VOLUME, heap.volumeM3())
        .add("its height as a cone", Kind.LENGTH, heap.coneHeightM())
        .add("its width as a cone", Kind.LENGTH, heap.coneDiameterM())
        .add(
            "slope at which it stands, rise over run",
            Kind.NUMBER,
            Math.tan(SandStack.DRY_SAND_RAD));
    if (dugKg() > 0) {
      stacked(figures);
    }
    return figures.all();
  }

  private List<Double> keptAtFilling() {
    List<Double> kept = new ArrayList<>();
    for (Outlook outlook : Outlook.values()) {
      kept.add(
          LaneDeposit.of(unit.reaches(), unit.depositsM(), feed, organic, porosity, outlook)
              .sandRecovery(feed));
    }
    return kept;
  }

  /** What lies in the stack, and how it drains. */
  private void stacked(Figures figures) {
    SandStack lying = stack();
    double height = unit.stackHeightM();
    figures
        .add("sand in the stack while it lies", Kind.VOLUME, lying.volumeM3())
        .add("length of the ground for it", Kind.LENGTH, lying.footLengthM(height))
        .add("width of the ground for it", Kind.LENGTH, lying.footWidthM(height))
        .add("size that 10 % of the deposit is finer than", Kind.GRAIN, d10M())
        .add("permeability by Hazen's rule, clean", Kind.FALL, permeabilityMps())
        .add("least time to drain in the lane", Kind.DAYS, drainS())
        .add(
            "least time to drain in the stack",
            Kind.HOURS,
            SandStack.leastDrainTimeS(height, DRAINABLE, permeabilityMps()));
  }

  @Override
  public void steps(Trace trace) {
    Sheet sheet = Sheet.of(LaneUnitResult.class, trace);
    sheet.begin("lane " + unit.name(), "");
    ChannelFlow flow = judged();
    double depth = sheet.step("depth", flow.depthM());
    double width = flow.channel().widthM();
    sheet.step("velocity", flow.velocityMps(), flow.flowM3ps(), width, depth);
    sheet.step(
        "reynolds",
        flow.reynoldsNumber(feed.liquid()),
        flow.flowM3ps(),
        feed.liquid().densityKgM3(),
        width,
        depth,
        feed.liquid().viscosityPaS());
    sheet.step("average", filling.meanRecovery());
    if (turn().isEmpty() || !(dugKg() > 0)) {
      return;
    }
    LaneTurn turn = turn().get();
    double fills = sheet.step("fills", turn.fillS());
    sheet.step("wait", turn.waitS(unit.lanes()), unit.lanes(), fills, unit.drainS(), unit.digS());
    double dug = sheet.step("dug", dugKg());
    sheet.step(
        "stacked",
        stack().volumeM3(),
        dug,
        unit.stackS(),
        fills,
        constituents().sandDensityKgM3(),
        porosity);
    double fine = sheet.step("fine", d10M());
    double permeability = sheet.step("permeability", permeabilityMps(), fine);
    sheet.step(
        "drained", drainS(), DRAINED_TO, DRAINABLE, unit.drainPathM(), permeability, deepestM());
  }

  /** The flow at the inlet over the deposit at which the lane is judged. */
  private ChannelFlow judged() {
    return unit.reaches().get(0).flow(feed.mixtureM3ps(), unit.depositsM().get(0));
  }

  @Override
  public void judge(UnitFindings findings) {
    findings.held(unit.name(), feed);
    turn()
        .ifPresent(
            turn -> {
              drains(findings);
              ready(findings, turn);
            });
    turbulent(findings);
  }

  /** Whether a lane is ready again when the others are full. */
  private void ready(UnitFindings findings, LaneTurn turn) {
    boolean enough = turn.waitS(unit.lanes()) >= 0;
    boolean often = InUnit.DAY.of(turn.fillS()) < SHORT_INTERVAL_D;
    Found found =
        (enough
                ? findings.found(
                    "lane-ready", often ? Severity.CAUTION : Severity.PASS, unit.name())
                : findings.found("lane-not-ready", Severity.CAUTION, unit.name()))
            .with("fills", Kind.DAYS, turn.fillS())
            .with("average", Kind.PERCENT, filling.meanRecovery())
            .with("clean", Kind.PERCENT, clean().recovery())
            .with("last", Kind.PERCENT, filling.lastRecovery())
            .with("rest", Kind.DAYS, unit.drainS() + unit.digS())
            .why("lane-fills");
    unit.filled()
        .ifPresent(share -> found.with("filled", Kind.PERCENT, share).why("judged-filled"));
    found
        .when(
            !enough,
            f ->
                f.with("idle", Kind.PERCENT, turn.idleShare(unit.lanes()))
                    .why("lane-idle")
                    .count("needed", Math.ceil(turn.lanesNeeded() - 1e-9))
                    .count("lanes", unit.lanes())
                    .cure("more-lanes"))
        .add();
  }

  /** Manning's formula and the capture of turbulent flow need turbulent liquor. */
  private void turbulent(UnitFindings findings) {
    LaneReach reach = unit.reaches().get(0);
    ChannelFlow flow = judged();
    double reynolds = flow.reynoldsNumber(feed.liquid());
    if (reynolds >= ChannelFlow.TURBULENT.low()) {
      return;
    }
    LaminarChannel laminar =
        new LaminarChannel(reach.channel(), feed.liquid().kinematicViscosityM2ps());
    Found found =
        findings
            .found(
                reynolds < LaminarChannel.LAMINAR_BELOW ? "lane-laminar" : "lane-transitional",
                Severity.CAUTION,
                unit.name())
            .count("reynolds", reynolds)
            .count("laminar", LaminarChannel.LAMINAR_BELOW)
            .count("turbulent", ChannelFlow.TURBULENT.low())
            .why("reynolds")
            .when(
                laminar.overManning(flow) > 1,
                f -> f.with("drag", Kind.NUMBER, laminar.overManning(flow)).why("laminar-drag"));
    if (reach.channel().slope() > 0) {
      double needs = laminar.normalDepthM(feed.mixtureM3ps());
      found.when(
          needs > flow.depthM(),
          f ->
              f.with("depth", Kind.DEPTH, flow.depthM())
                  .with("needs", Kind.DEPTH, needs)
                  .why("laminar-depth"));
    }
    found.cure("thin-for-lane").add();
  }

  /** Whether it drains in the time that it is given, and where its sand lies meanwhile. */
  private void drains(UnitFindings findings) {
    double least = drainS();
    boolean drains = least <= unit.drainS();
    SandStack stack = stack();
    findings
        .found("lane-drains", "lane-drains-late", drains, Severity.CAUTION, unit.name())
        .with("path", Kind.LENGTH, unit.drainPathM())
        .with("least", Kind.DAYS, least)
        .with("given", Kind.DAYS, unit.drainS())
        .with("stacked", Kind.DAYS, unit.stackS())
        .with("volume", Kind.VOLUME, stack.volumeM3())
        .with("length", Kind.LENGTH, stack.footLengthM(unit.stackHeightM()))
        .with("width", Kind.LENGTH, stack.footWidthM(unit.stackHeightM()))
        .why("drains")
        .why("stack")
        .cure(!drains, "drain-under")
        .add();
  }
}
