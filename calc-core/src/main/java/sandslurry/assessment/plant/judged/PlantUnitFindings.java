package sandslurry.assessment.plant.judged;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.PlantUnits;
import sandslurry.correlation.Bound;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Figure;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.BoxUnit;
import sandslurry.plant.unit.CycloneUnit;
import sandslurry.plant.unit.LaneUnit;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.LaminarChannel;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneTurn;
import sandslurry.separation.pit.PitMixing;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The units of a plant in its main mode: lanes, pits and their mixers. */
final class PlantUnitFindings extends PlantFindingWriter {
  /**
   * A lane that is dug more often than this is hardly run by anybody (common practice, no source).
   */
  private static final double SHORT_INTERVAL_D = 1;

  /**
   * Mixers commonly run a little above the just-suspended speed; twice that is far above (common
   * practice, no source).
   */
  private static final double FAST_MIXER = 2;

  /** Less sand than this share does not count as settled in a pit. */
  private static final double LITTLE = 1e-3;

  PlantUnitFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    result.main().balance().ifPresent(this::units);
    return findings;
  }

  private void units(SteadyBalance balance) {
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    for (PlantUnit unit : spec.units()) {
      Stream feed = balance.feed(unit.name());
      if (unit instanceof BoxUnit box) {
        PlantUnits.box(model, box, feed).ifPresent(r -> excesses.addAll(r.excesses()));
        rinse(box);
      } else if (unit instanceof CycloneUnit cyclone) {
        PlantUnits.cyclone(model, cyclone, cyclone.model(), feed)
            .ifPresent(r -> excesses.addAll(r.performance().excesses()));
      } else if (unit instanceof LaneUnit lane) {
        PlantUnits.filling(model, lane, feed).ifPresent(filling -> lane(lane, filling));
        PlantUnits.laneFeed(model, lane, feed).ifPresent(seen -> turbulent(lane, seen));
      } else if (unit instanceof PitUnit pit) {
        PlantUnits.mixing(model, pit, feed)
            .ifPresent(
                mixing -> mixing(pit, mixing, PlantUnits.mixingFeed(model, feed).orElseThrow()));
        settled(pit, balance);
      } else {
        PlantUnits.pen(model, unit)
            .ifPresent(
                pen -> findings.addAll(new AlleyFlushFindings(this, units, pen, balance).all()));
      }
      if (!excesses.isEmpty()) {
        List<Bound.Excess> those = List.copyOf(excesses);
        found("outside", Severity.NOTE, unit.name())
            .with(
                "excesses",
                shown ->
                    those.stream()
                        .map(excess -> excess.describe(shown))
                        .distinct()
                        .collect(Collectors.joining("; ")))
            .why("outside")
            .add();
        excesses.clear();
      }
    }
  }

  private void rinse(BoxUnit box) {
    boolean clean = model.rinseM3ps(box, model.longestMode(), PlantModel.Case.BASE) > 0;
    if (box.box().rinsePoreVolumes() > 0 && !clean) {
      found("not-rinsed", Severity.CAUTION, box.name())
          .with("volumes", Kind.NUMBER, box.box().rinsePoreVolumes())
          .why("not-rinsed")
          .cure("rinse-stream")
          .add();
    }
  }

  private void lane(LaneUnit lane, LaneFilling filling) {
    Optional<LaneTurn> turn = PlantUnits.turn(lane, filling);
    if (turn.isEmpty()) {
      return;
    }
    boolean enough = turn.get().waitS(lane.lanes()) >= 0;
    drains(lane, filling);
    boolean often = InUnit.days(turn.get().fillS()) < SHORT_INTERVAL_D;
    Found found =
        enough
            ? found("lane-ready", often ? Severity.CAUTION : Severity.PASS, lane.name())
            : found("lane-not-ready", Severity.CAUTION, lane.name());
    found
        .with("fills", Kind.DAYS, turn.get().fillS())
        .with("average", Kind.PERCENT, filling.meanRecovery())
        .with("clean", Kind.PERCENT, filling.points().get(0).recovery())
        .with("last", Kind.PERCENT, filling.lastRecovery())
        .with("rest", Kind.DAYS, lane.drainS() + lane.digS())
        .why("lane-fills");
    lane.filled()
        .ifPresent(share -> found.with("filled", Kind.PERCENT, share).why("judged-filled"));
    if (!enough) {
      found
          .with("needed", count(Math.ceil(turn.get().lanesNeeded() - 1e-9)))
          .with("lanes", count(lane.lanes()))
          .cure("more-lanes");
    }
    found.add();
  }

  /** Manning's formula and the capture of turbulent flow need turbulent liquor. */
  private void turbulent(LaneUnit lane, UnitFeed feed) {
    LaneReach reach = lane.reaches().get(0);
    ChannelFlow flow = reach.flow(feed.mixtureM3ps(), lane.depositsM().get(0));
    double reynolds = flow.reynoldsNumber(feed.liquid());
    if (reynolds >= ChannelFlow.TURBULENT.low()) {
      return;
    }
    LaminarChannel laminar =
        new LaminarChannel(reach.channel(), feed.liquid().kinematicViscosityM2ps());
    Found found =
        found(
                reynolds < LaminarChannel.LAMINAR_BELOW ? "lane-laminar" : "lane-transitional",
                Severity.CAUTION,
                lane.name())
            .with("reynolds", count(reynolds))
            .with("laminar", count(LaminarChannel.LAMINAR_BELOW))
            .with("turbulent", count(ChannelFlow.TURBULENT.low()))
            .why("reynolds");
    if (laminar.overManning(flow) > 1) {
      found.with("drag", Kind.NUMBER, laminar.overManning(flow)).why("laminar-drag");
    }
    if (reach.channel().slope() > 0) {
      double needs = laminar.normalDepthM(feed.mixtureM3ps());
      if (needs > flow.depthM()) {
        found
            .with("depth", Kind.BORE, flow.depthM())
            .with("needs", Kind.BORE, needs)
            .why("laminar-depth");
      }
    }
    found.cure("thin-for-lane").add();
  }

  /** Whether a lane drains in the time that it is given, and where its sand lies meanwhile. */
  private void drains(LaneUnit lane, LaneFilling filling) {
    double least = PlantUnits.drainS(model, lane, filling);
    boolean drains = least <= lane.drainS();
    SandStack stack = PlantUnits.stack(model, lane, filling);
    Found found =
        found("lane-drains", "lane-drains-late", drains, Severity.CAUTION, lane.name())
            .with("path", Kind.LENGTH, lane.drainPathM())
            .with("least", Kind.DAYS, least)
            .with("given", Kind.DAYS, lane.drainS())
            .with("stacked", Kind.DAYS, lane.stackS())
            .with("volume", Kind.VOLUME, stack.volumeM3())
            .with("length", Kind.LENGTH, stack.footLengthM(lane.stackHeightM()))
            .with("width", Kind.LENGTH, stack.footWidthM(lane.stackHeightM()))
            .why("drains")
            .why("stack");
    if (!drains) {
      found.cure("drain-under");
    }
    found.add();
  }

  private void mixing(PitUnit pit, PitMixing mixing, UnitFeed feed) {
    if (!(feed.sandTotalKgps() > 0)) {
      return;
    }
    boolean little = mixing.speedRatio() < 1;
    boolean much = mixing.speedRatio() > FAST_MIXER;
    Found found =
        (little
                ? found("mix-little", Severity.CAUTION, pit.name())
                : much
                    ? found("mix-much", Severity.CAUTION, pit.name())
                    : found("mix-just", Severity.NOTE, pit.name()))
            .with("just", Kind.FREQUENCY, mixing.speedRps() / Math.max(mixing.speedRatio(), 1e-9))
            .with("speed", Kind.FREQUENCY, mixing.speedRps())
            .with("stays", Kind.PERCENT, mixing.leftKgps(feed) / feed.sandTotalKgps())
            .with("along", Kind.PERCENT, mixing.carriedKgps(feed) / feed.sandTotalKgps())
            .why(mixing.speedRps() > 0 ? "zwietering" : "mixer-at-rest");
    if (mixing.speedRps() > 0 && (little || much)) {
      found.cure(little ? "mix-faster" : "mix-slower");
    }
    found.add();
  }

  /** Sand that settles in a pit, and what the balance takes for granted about it. */
  private void settled(PitUnit pit, SteadyBalance balance) {
    Stream feed = balance.feed(pit.name());
    if (!(feed.sandKgps() > 0) || pit.pool().isPresent()) {
      return;
    }
    double settles = balance.stream(pit.settled()).sandKgps();
    double share = Math.min(1, settles / feed.sandKgps());
    double rate = feed.volumeM3ps() / pit.areaM2();
    boolean mixed = pit.mixer().isPresent();
    Optional<Figure> fills = result.accounts().flatMap(a -> a.figure(PlantTotals.PITS, pit.name()));
    if (fills.isEmpty() || share < LITTLE) {
      found("none-settles", Severity.NOTE, pit.name())
          .with("rate", Kind.FALL, rate)
          .why(mixed ? "mixer-holds" : "rate-holds")
          .add();
      return;
    }
    boolean soon = fills.get().range().base() < InUnit.ofDays(PlantTotals.YEAR_D);
    Found found =
        found("sand-in-pit", soon ? Severity.CAUTION : Severity.NOTE, pit.name())
            .with("share", Kind.PERCENT, share)
            .with("settles", Kind.MASS_PER_DAY, settles)
            .with("rate", Kind.FALL, rate)
            .why("stays");
    with(found, "fills", fills.get()).why("quarter").why(mixed ? "mixer-misses" : "no-mixer");
    if (soon) {
      found.cure("dig-pit");
    }
    found.add();
  }
}
