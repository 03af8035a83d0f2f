package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.circuit.Constituents;
import sandslurry.circuit.Range;
import sandslurry.circuit.SteadyBalance;
import sandslurry.circuit.Stream;
import sandslurry.design.PlantSpec.BoxSpec;
import sandslurry.design.PlantSpec.CakeSpec;
import sandslurry.design.PlantSpec.CycloneSpec;
import sandslurry.design.PlantSpec.LaneUnitSpec;
import sandslurry.design.PlantSpec.PitSpec;
import sandslurry.design.PlantSpec.UnitSpec;
import sandslurry.separation.BoxResult;
import sandslurry.separation.BoxSand;
import sandslurry.separation.CakeSeparator.CakeResult;
import sandslurry.separation.ChannelFlow;
import sandslurry.separation.CycloneResult;
import sandslurry.separation.HydrocycloneModel;
import sandslurry.separation.HydrocycloneModels;
import sandslurry.separation.LaneDeposit;
import sandslurry.separation.LaneFilling;
import sandslurry.separation.LaneTurn;
import sandslurry.separation.Outlook;
import sandslurry.separation.PitMixing;
import sandslurry.separation.SandStack;
import sandslurry.separation.UnitFeed;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** What the kernel of a unit finds at the feed of a balance. */
final class PlantUnits {
  /** A lane is cleaned when it keeps less than this share of what it is fed. */
  static final double LEAST_KEPT = 0.5;

  private static final double PIT_SHEAR_PS = 10;

  private PlantUnits() {}

  static List<Figure> figures(PlantModel model, UnitSpec unit, SteadyBalance balance) {
    List<Figure> figures = new ArrayList<>();
    Stream feed = balance.feed(unit.name());
    if (unit instanceof BoxSpec box) {
      box(model, box, feed).ifPresent(result -> box(figures, feed, box, result));
    } else if (unit instanceof CycloneSpec cyclone) {
      cyclone(figures, model, cyclone, feed);
    } else if (unit instanceof LaneUnitSpec lane) {
      lane(figures, model, lane, feed);
    } else if (unit instanceof CakeSpec cake) {
      model
          .liquor()
          .screening(feed, cake.runningShare())
          .map(cake.separator()::evaluate)
          .ifPresent(result -> cake(figures, cake, result));
    } else if (unit instanceof PitSpec pit && pit.mixer().isPresent()) {
      mixing(model, pit, feed).ifPresent(mixing -> mixing(figures, mixing));
    }
    return figures;
  }

  private static void add(List<Figure> figures, String what, Kind<?> kind, double value) {
    figures.add(new Figure(what, kind, Range.of(value)));
  }

  /** Cautious, likely and hopeful, which rounding may put out of order. */
  private static Range band(List<Double> outlooks) {
    return Range.over(outlooks.get(1), outlooks, share -> share);
  }

  private static void liquor(List<Figure> figures, Stream feed, UnitFeed seen) {
    add(figures, "feed while it runs", Kind.FLOW, seen.mixtureM3ps());
    add(figures, "sand-free solids of the feed", Kind.PERCENT, feed.totalSolids());
    add(figures, "viscosity of the liquor", Kind.VISCOSITY, seen.liquid().viscosityPaS());
  }

  /** The feed of a box with its rinse taken out again, as its kernel wants it. */
  static Optional<UnitFeed> boxFeed(PlantModel model, BoxSpec box, Stream feed) {
    Optional<UnitFeed> mixed = model.liquor().settling(feed, box.runningShare(), box.shearRatePs());
    if (mixed.isEmpty()) {
      return mixed;
    }
    double rinse =
        box.box().rinseM3ps(mixed.get())
            * box.runningShare()
            * model.constituents().waterDensityKgM3();
    double[] flows = feed.toArray();
    if (rinse < flows[Constituents.WATER]) {
      flows[Constituents.WATER] -= rinse;
    }
    return model
        .liquor()
        .settling(Stream.of(model.constituents(), flows), box.runningShare(), box.shearRatePs());
  }

  static Optional<BoxResult> box(PlantModel model, BoxSpec box, Stream feed) {
    return boxFeed(model, box, feed).map(seen -> box.box().evaluate(seen, PlantModel.ORGANIC));
  }

  private static void box(List<Figure> figures, Stream feed, BoxSpec spec, BoxResult result) {
    add(figures, "sand-free solids of the feed", Kind.PERCENT, feed.totalSolids());
    add(figures, "rising velocity", Kind.FALL, result.overflowVelocityMps());
    add(figures, "stay", Kind.TIME, result.residenceTimeS());
    BoxSand likely = result.sand(Outlook.LIKELY);
    double fed = feed.sandKgps() / spec.runningShare();
    if (fed > 0) {
      figures.add(
          new Figure(
              "share of its sand that it catches",
              Kind.PERCENT,
              band(
                  result.sands().stream()
                      .map(sand -> Math.min(1, sand.sandKgps() / fed))
                      .toList())));
    }
    add(figures, "water in the sand", Kind.PERCENT, likely.moisture());
    add(figures, "matter in the sand that is not sand", Kind.PERCENT, likely.foreignMatter());
    likely.screwLoad().ifPresent(load -> add(figures, "load of the screw", Kind.PERCENT, load));
    add(figures, "rinse water", Kind.FLOW, result.rinseM3ps());
  }

  static Optional<CycloneResult> cyclone(
      PlantModel model, CycloneSpec cyclone, HydrocycloneModel by, Stream feed) {
    return model
        .liquor()
        .settling(feed, cyclone.runningShare(), cyclone.shearRatePs())
        .map(seen -> cyclone.cyclone().evaluate(seen, by));
  }

  private static void cyclone(
      List<Figure> figures, PlantModel model, CycloneSpec cyclone, Stream feed) {
    Optional<UnitFeed> seen =
        model.liquor().settling(feed, cyclone.runningShare(), cyclone.shearRatePs());
    if (seen.isEmpty()) {
      return;
    }
    liquor(figures, feed, seen.get());
    for (HydrocycloneModel by : HydrocycloneModels.all()) {
      CycloneResult result = cyclone.cyclone().evaluate(seen.get(), by);
      String of = " (" + by.name() + ")";
      add(figures, "cut size" + of, Kind.GRAIN, result.performance().cutSizeM());
      add(figures, "pressure drop" + of, Kind.PRESSURE, result.performance().pressureDropPa());
      add(
          figures,
          "feed that leaves below" + of,
          Kind.PERCENT,
          result.performance().underflowShare());
    }
    CycloneResult own = cyclone.cyclone().evaluate(seen.get(), cyclone.model());
    add(figures, "sand in the underflow, by volume", Kind.PERCENT, own.underflowSand());
    add(figures, "it ropes from", Kind.PERCENT, own.ropingLimit());
    add(figures, "head of the feed pump", Kind.HEAD, own.headM());
    add(figures, "hydraulic power", Kind.POWER, own.hydraulicPowerW());
  }

  static Optional<UnitFeed> laneFeed(PlantModel model, LaneUnitSpec lane, Stream feed) {
    double flow = feed.volumeM3ps() / lane.runningShare();
    if (!(flow > 0)) {
      return Optional.empty();
    }
    ChannelFlow channel = lane.reaches().get(0).flow(flow, lane.depositsM().get(0));
    return model
        .liquor()
        .settling(feed, lane.runningShare(), 3 * channel.velocityMps() / channel.depthM());
  }

  static Optional<LaneFilling> filling(PlantModel model, LaneUnitSpec lane, Stream feed) {
    return laneFeed(model, lane, feed)
        .map(
            seen ->
                LaneFilling.of(
                    lane.reaches(),
                    seen,
                    lane.runningShare(),
                    model.spec().porosity(),
                    Outlook.LIKELY,
                    LEAST_KEPT));
  }

  static Optional<LaneTurn> turn(LaneUnitSpec lane, LaneFilling filling) {
    return filling.intervalS().isPresent() && filling.intervalS().getAsDouble() > 0
        ? Optional.of(new LaneTurn(filling.intervalS().getAsDouble(), lane.drainS(), lane.digS()))
        : Optional.empty();
  }

  private static void lane(List<Figure> figures, PlantModel model, LaneUnitSpec lane, Stream feed) {
    Optional<UnitFeed> seen = laneFeed(model, lane, feed);
    if (seen.isEmpty()) {
      return;
    }
    liquor(figures, feed, seen.get());
    List<Double> kept = new ArrayList<>();
    for (Outlook outlook : Outlook.values()) {
      kept.add(
          LaneDeposit.of(
                  lane.reaches(),
                  lane.depositsM(),
                  seen.get(),
                  PlantModel.ORGANIC,
                  model.spec().porosity(),
                  outlook)
              .sandRecovery(seen.get()));
    }
    figures.add(
        new Figure("share of its sand that it keeps at this filling", Kind.PERCENT, band(kept)));
    LaneFilling filling = filling(model, lane, feed).orElseThrow();
    LaneFilling.Point clean = filling.points().get(0);
    LaneFilling.Point last = filling.points().get(filling.points().size() - 1);
    add(figures, "velocity, clean", Kind.VELOCITY, clean.velocitiesMps().get(0));
    add(figures, "velocity at the end", Kind.VELOCITY, last.velocitiesMps().get(0));
    add(figures, "sand kept, clean", Kind.PERCENT, clean.recovery());
    add(figures, "sand kept at the end", Kind.PERCENT, last.recovery());
    add(figures, "sand kept from clean to clean-out", Kind.PERCENT, filling.meanRecovery());
    filling
        .intervalS()
        .ifPresent(interval -> add(figures, "clean-out interval", Kind.DAYS, interval));
    turn(lane, filling)
        .ifPresent(turn -> add(figures, "lanes needed in turn", Kind.NUMBER, turn.lanesNeeded()));
    double dug = filling.depositedKg().stream().mapToDouble(Double::doubleValue).sum();
    SandStack stack =
        new SandStack(
            dug,
            model.constituents().sandDensityKgM3(),
            model.spec().porosity(),
            SandStack.DRY_SAND_RAD);
    add(figures, "heap of one clean-out", Kind.VOLUME, stack.volumeM3());
    add(figures, "its height as a cone", Kind.LENGTH, stack.coneHeightM());
    add(figures, "its width as a cone", Kind.LENGTH, stack.coneDiameterM());
  }

  private static void cake(List<Figure> figures, CakeSpec cake, CakeResult result) {
    add(figures, "cake", Kind.MASS_PER_DAY, result.cakeKgps() * cake.runningShare());
    add(figures, "dry matter of the cake", Kind.PERCENT, result.solids());
  }

  static Optional<PitMixing> mixing(PlantModel model, PitSpec pit, Stream feed) {
    return pit.mixer()
        .flatMap(
            mixer ->
                mixingFeed(model, feed)
                    .map(
                        seen ->
                            PitMixing.of(
                                mixer.impeller(),
                                mixer.speedRps(),
                                seen,
                                pit.pit().weirVolumeM3())));
  }

  static Optional<UnitFeed> mixingFeed(PlantModel model, Stream feed) {
    return model.liquor().settling(feed, 1, PIT_SHEAR_PS);
  }

  private static void mixing(List<Figure> figures, PitMixing mixing) {
    add(figures, "speed of the mixer", Kind.FREQUENCY, mixing.speedRps());
    add(figures, "speed over that which just suspends all sand", Kind.NUMBER, mixing.speedRatio());
    add(figures, "power of the mixer", Kind.POWER, mixing.powerW());
    add(
        figures,
        "stay in the pit",
        Kind.DAYS,
        Math.min(mixing.residenceTimeS(), InUnit.ofDays(1e6)));
  }
}
