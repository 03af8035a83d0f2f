package sandslurry.assessment.plant.judged;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sandslurry.assessment.plant.Figure;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.PlantUnits;
import sandslurry.correlation.Bound;
import sandslurry.design.plant.UnitSpec;
import sandslurry.design.plant.UnitSpec.BoxSpec;
import sandslurry.design.plant.UnitSpec.CycloneSpec;
import sandslurry.design.plant.UnitSpec.LaneUnitSpec;
import sandslurry.design.plant.UnitSpec.PitSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTurn;
import sandslurry.separation.pit.PitMixing;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the units of a plant in its main mode: lanes, pits and their mixers. */
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
    for (UnitSpec unit : spec.units()) {
      Stream feed = balance.feed(unit.name());
      if (unit instanceof BoxSpec box) {
        PlantUnits.box(model, box, feed).ifPresent(r -> excesses.addAll(r.excesses()));
        rinse(box);
      } else if (unit instanceof CycloneSpec cyclone) {
        PlantUnits.cyclone(model, cyclone, cyclone.model(), feed)
            .ifPresent(r -> excesses.addAll(r.performance().excesses()));
      } else if (unit instanceof LaneUnitSpec lane) {
        PlantUnits.filling(model, lane, feed).ifPresent(filling -> lane(lane, filling));
      } else if (unit instanceof PitSpec pit) {
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
        add(
            Severity.NOTE,
            unit.name(),
            "Methods are used outside their published ranges.",
            String.join(
                    "; ", excesses.stream().map(excess -> excess.describe(units)).limit(4).toList())
                + (excesses.size() > 4 ? "; and " + (excesses.size() - 4) + " more" : "")
                + ".",
            "");
        excesses.clear();
      }
    }
  }

  private void rinse(BoxSpec box) {
    boolean clean = model.rinseM3ps(box, model.longestMode(), PlantModel.Case.BASE) > 0;
    if (box.box().rinsePoreVolumes() > 0 && !clean) {
      add(
          Severity.CAUTION,
          box.name(),
          "The sand is not rinsed: no stream of fresh water comes for it.",
          "A rinse of "
              + show(Kind.NUMBER, box.box().rinsePoreVolumes())
              + " pore volumes is wanted. Water in the slurry cleans nothing.",
          "Bring fresh water to the box as its rinse stream.");
    }
  }

  private void lane(LaneUnitSpec lane, LaneFilling filling) {
    Optional<LaneTurn> turn = PlantUnits.turn(lane, filling);
    if (turn.isEmpty()) {
      return;
    }
    double interval = InUnit.days(turn.get().fillS());
    double wait = turn.get().waitS(lane.lanes());
    boolean enough = wait >= 0;
    drains(lane, filling);
    add(
        !enough || interval < SHORT_INTERVAL_D ? Severity.CAUTION : Severity.PASS,
        lane.name(),
        enough
            ? "One lane is always ready while the others drain and are dug."
            : "The next lane is not ready when one is full.",
        "A lane fills in "
            + show(Kind.DAYS, turn.get().fillS())
            + " and keeps "
            + show(Kind.PERCENT, filling.meanRecovery())
            + " of its sand from clean to clean-out, "
            + show(Kind.PERCENT, filling.points().get(0).recovery())
            + " at first and "
            + show(Kind.PERCENT, filling.lastRecovery())
            + " at last"
            + (lane.filled().isPresent()
                ? ", while the balance judges it "
                    + show(Kind.PERCENT, lane.filled().getAsDouble())
                    + " full"
                : "")
            + "; draining and digging take "
            + show(Kind.DAYS, lane.drainS() + lane.digS())
            + ".",
        enough
            ? ""
            : "Have "
                + show(Kind.NUMBER, turn.get().lanesNeeded())
                + " lanes in turn instead of "
                + lane.lanes()
                + ".");
  }

  /** Whether a lane drains in the time that it is given, and where its sand lies meanwhile. */
  private void drains(LaneUnitSpec lane, LaneFilling filling) {
    double least = PlantUnits.drainS(model, lane, filling);
    boolean drains = least <= lane.drainS();
    SandStack stack = PlantUnits.stack(model, lane, filling);
    add(
        drains ? Severity.PASS : Severity.CAUTION,
        lane.name(),
        drains
            ? "Clean sand drains in the lane in the time that it is given."
            : "Even clean sand does not drain in the lane in the time that it is given.",
        "Over "
            + show(Kind.LENGTH, lane.drainPathM())
            + " to a drain the water in it falls to a tenth in "
            + show(Kind.DAYS, least)
            + " at least (Boussinesq 1904, permeability by Hazen's rule); it is given "
            + show(Kind.DAYS, lane.drainS())
            + ". Organic matter in the pores makes that far longer. Dug out, the sand of "
            + show(Kind.DAYS, lane.stackS())
            + ", "
            + show(Kind.VOLUME, stack.volumeM3())
            + ", lies in a windrow on ground of "
            + show(Kind.LENGTH, stack.footLengthM(lane.stackHeightM()))
            + " by "
            + show(Kind.LENGTH, stack.footWidthM(lane.stackHeightM()))
            + ".",
        drains ? "" : "Put drains under the sand or in the wall, or let it drain in the stack.");
  }

  private void mixing(PitSpec pit, PitMixing mixing, UnitFeed feed) {
    if (!(feed.sandTotalKgps() > 0)) {
      return;
    }
    double left = mixing.leftKgps(feed) / feed.sandTotalKgps();
    double carried = mixing.carriedKgps(feed) / feed.sandTotalKgps();
    double just = mixing.speedRps() / Math.max(mixing.speedRatio(), 1e-9);
    boolean little = mixing.speedRatio() < 1;
    boolean much = mixing.speedRatio() > FAST_MIXER;
    add(
        little || much ? Severity.CAUTION : Severity.NOTE,
        pit.name(),
        little
            ? "Too little mixing: sand stays on the floor of the pit, where it sets."
            : much
                ? "Far more mixing than sand needs: it goes along with all that leaves the pit."
                : "The mixer just holds the sand up, and sends it along with all that leaves.",
        "By Zwietering (1958) all sand is up at "
            + (mixing.speedRps() > 0
                ? show(Kind.FREQUENCY, just)
                : "a speed that a mixer at rest does not have")
            + "; at "
            + show(Kind.FREQUENCY, mixing.speedRps())
            + " "
            + show(Kind.PERCENT, left)
            + " of the sand stays and "
            + show(Kind.PERCENT, carried)
            + " goes along. Before a separator the first is lost room, after it the second is lost"
            + " sand.",
        little && mixing.speedRps() > 0
            ? "Run it at " + show(Kind.FREQUENCY, just) + " while the pit is pumped."
            : much ? "Run it at " + show(Kind.FREQUENCY, just) + "." : "");
  }

  /** Sand that settles in a pit, and what the balance takes for granted about it. */
  private void settled(PitSpec pit, SteadyBalance balance) {
    Stream feed = balance.feed(pit.name());
    if (!(feed.sandKgps() > 0) || pit.pool().isPresent()) {
      return;
    }
    double settles = balance.stream(pit.settled()).sandKgps();
    Optional<Figure> fills = result.accounts().flatMap(a -> a.figure(PlantTotals.PITS, pit.name()));
    if (fills.isEmpty() || settles / feed.sandKgps() < LITTLE) {
      add(
          Severity.NOTE,
          pit.name(),
          "The balance counts no sand as settled in this pit.",
          pit.mixer().isPresent()
              ? "Its mixer holds every class up while it runs, and is taken to lift again what has"
                  + " settled meanwhile."
              : "At its overflow rate of "
                  + show(Kind.FALL, feed.volumeM3ps() / pit.areaM2())
                  + " none falls out of its liquor.",
          "");
      return;
    }
    boolean soon = fills.get().range().base() < InUnit.ofDays(PlantTotals.YEAR_D);
    add(
        soon ? Severity.CAUTION : Severity.NOTE,
        pit.name(),
        "Sand settles in this pit and has to be dug out of it.",
        show(Kind.PERCENT, Math.min(1, settles / feed.sandKgps()))
            + " of its sand, "
            + show(Kind.MASS_PER_DAY, settles)
            + ", stays on the floor and takes a quarter of the pit in "
            + fills.get().shown(units)
            + ". "
            + (pit.mixer().isPresent()
                ? "Its mixer does not hold all of it up."
                : "No mixer is given: sand falls against an overflow rate of "
                    + show(Kind.FALL, feed.volumeM3ps() / pit.areaM2())
                    + ", which is the flow over the plan area (capacity over depth)."),
        soon
            ? "Catch more sand before it, mix it while it is pumped, or plan to dig it out within "
                + least(fills.get())
                + ". Do not enter it: see the cautions."
            : "");
  }
}
