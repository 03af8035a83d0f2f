package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.design.plant.PlantSpec.FlushSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Water;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Flush;
import sandslurry.plant.unit.BoxUnit;
import sandslurry.plant.unit.CakeUnit;
import sandslurry.plant.unit.CycloneUnit;
import sandslurry.plant.unit.LaneUnit;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.SeparatorUnit;
import sandslurry.plant.unit.SettlingFloor;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.BoxResult;
import sandslurry.separation.box.BoxSand;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.cyclone.CycloneResult;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.LaneDeposit;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTurn;
import sandslurry.separation.pit.PitMixing;
import sandslurry.separation.screen.CakeSeparator.CakeResult;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** What the kernel of a unit finds at the feed of a balance. */
public final class PlantUnits {
  /** A pit is dug out when sand has taken this share of it: ours, no source. */
  private static final double PIT_SAND_SHARE = 0.25;

  /**
   * Water that runs out of medium sand over its bulk volume (specific yield, Johnson 1967, US
   * Geological Survey Water-Supply Paper 1662-D, read as a later page copies it: 0.26, of 0.15 to
   * 0.32).
   */
  private static final double DRAINABLE = 0.26;

  /** A lane counts as drained when the water in its sand has fallen to this share. */
  private static final double DRAINED_TO = 0.1;

  private static final double MANY_YEARS_S =
      InUnit.ofDays(PlantTotals.MANY_YEARS * PlantTotals.YEAR_D);

  private PlantUnits() {}

  /**
   * What a unit does at a balance, as rows of a table.
   *
   * @param model the plant
   * @param unit a unit of the plant
   * @param balance a steady balance of the plant
   * @return figures with their ranges; empty for a unit without any
   */
  public static List<Figure> figures(PlantModel model, PlantUnit unit, SteadyBalance balance) {
    List<Figure> figures = new ArrayList<>();
    Stream feed = balance.feed(unit.name());
    if (unit instanceof BoxUnit box) {
      box(model, box, feed).ifPresent(result -> box(figures, feed, box, result));
    } else if (unit instanceof CycloneUnit cyclone) {
      cyclone(figures, model, cyclone, feed);
    } else if (unit instanceof LaneUnit lane) {
      lane(figures, model, lane, feed);
    } else if (unit instanceof CakeUnit cake) {
      model
          .liquor()
          .screening(feed, cake.runningShare())
          .map(cake.separator()::evaluate)
          .ifPresent(result -> cake(figures, cake, result));
    } else if (unit instanceof PitUnit pit) {
      mixing(model, pit, feed).ifPresent(mixing -> mixing(figures, mixing));
      settled(figures, model, pit, balance);
    } else {
      pen(model, unit).ifPresent(pen -> flush(figures, model, pen, balance));
    }
    return figures;
  }

  /**
   * The pen that is flushed by a unit.
   *
   * @param model the plant
   * @param unit a unit of the plant
   * @return the pen; empty when the unit is no flush
   */
  public static Optional<PenSpec> pen(PlantModel model, PlantUnit unit) {
    return model.spec().pens().stream()
        .filter(pen -> pen.flush().map(flush -> flush.unit().equals(unit.name())).orElse(false))
        .findFirst();
  }

  /**
   * Water of one flush, as the balance brings it.
   *
   * @param pen a pen with a flush
   * @param balance a steady balance of the plant
   * @return volume [m3]
   */
  public static double flushWaterM3(PenSpec pen, SteadyBalance balance) {
    return balance.stream(pen.flush().orElseThrow().water()).volumeM3ps()
        * pen.pen().scrapingIntervalS();
  }

  /**
   * A grain at the upper bound of the coarsest class of the bedding sand.
   *
   * @param model the plant
   * @return the grain
   */
  public static Grain coarsest(PlantModel model) {
    List<SizeClass> classes = model.constituents().sandClasses();
    return new Grain(
        classes.get(classes.size() - 1).highM(),
        model.constituents().sandDensityKgM3(),
        model.liquor().shape());
  }

  /**
   * The flush water, taken as clear: the thinnest liquid that it can be.
   *
   * @param model the plant
   * @return density and viscosity at the temperature of the liquor
   */
  public static Liquid water(PlantModel model) {
    double temperature = model.liquor().temperatureK();
    return new Liquid(model.constituents().waterDensityKgM3(), Water.viscosityPaS(temperature));
  }

  private static void flush(
      List<Figure> figures, PlantModel model, PenSpec pen, SteadyBalance balance) {
    FlushSpec spec = pen.flush().orElseThrow();
    Flush flush = spec.flush();
    Liquid water = water(model);
    add(figures, "depth of the flush", Kind.BORE, flush.depthM());
    add(figures, "velocity of the flush", Kind.VELOCITY, flush.velocityMps());
    add(figures, "time that it lasts", Kind.TIME, flush.durationS());
    add(figures, "length of the wave", Kind.LENGTH, flush.waveM());
    add(figures, "wave over length of the alley", Kind.NUMBER, flush.waveM() / spec.lengthM());
    add(figures, "stress on the floor", Kind.STRESS, flush.stressPa(water.densityKgM3()));
    add(
        figures,
        "stress that moves the coarsest sand",
        Kind.STRESS,
        Flush.movingStressPa(coarsest(model), water));
    add(figures, "shear velocity", Kind.FALL, flush.shearVelocityMps());
    add(
        figures,
        "slope for 5 ft/s at this depth",
        Kind.PERCENT,
        flush.slopeFor(Flush.PRACTICE_VELOCITY_MPS));
    add(figures, "water of one flush", Kind.VOLUME, spec.volumeM3());
    add(figures, "water that the balance brings for one", Kind.VOLUME, flushWaterM3(pen, balance));
  }

  /**
   * Time in which settled sand takes a quarter of a pit.
   *
   * @param model the plant
   * @param pit the pit
   * @param settles what settles in the pit
   * @return time, at most fifty years [s]; empty when no sand settles
   */
  public static OptionalDouble fillsS(PlantModel model, PitUnit pit, Stream settles) {
    double bulk =
        settles.sandKgps() / model.constituents().sandDensityKgM3() / (1 - model.spec().porosity());
    return bulk > 0
        ? OptionalDouble.of(
            Math.min(PIT_SAND_SHARE * pit.pit().weirVolumeM3() / bulk, MANY_YEARS_S))
        : OptionalDouble.empty();
  }

  /**
   * How often a pump starts at the balance of the longest mode.
   *
   * @param model the plant
   * @param result what came of the plant
   * @param pit the pit
   * @param pump the stream that the pump draws
   * @return starts per hour; empty when the pump does not stop
   */
  public static Optional<Double> startsPerHour(
      PlantModel model, PlantResult result, PitUnit pit, String pump) {
    ModeSpec mode = result.main().mode();
    return result
        .main()
        .balance()
        .map(
            balance -> {
              double taken = balance.stream(pump).volumeM3ps();
              double set = model.pumpM3ps(pit, pump, mode);
              return InUnit.ofHours(1) * pit.pit().levels().startsPerS(taken, set);
            })
        .filter(starts -> starts > 0);
  }

  private static void settled(
      List<Figure> figures, PlantModel model, PitUnit pit, SteadyBalance balance) {
    double fed = balance.feed(pit.name()).sandKgps();
    double settled = balance.stream(pit.settled()).sandKgps();
    if (pit.pool().isPresent()) {
      add(
          figures,
          "solids of the liquor above what settles",
          Kind.PERCENT,
          balance.stream(pit.pit().overflow().orElseThrow()).totalSolids());
    } else if (fed > 0) {
      add(figures, "plan area as a square of side", Kind.LENGTH, Math.sqrt(pit.areaM2()));
      add(
          figures,
          "overflow rate",
          Kind.FALL,
          balance.feed(pit.name()).volumeM3ps() / pit.areaM2());
    }
    if (fed > 0) {
      add(figures, "sand that settles", Kind.MASS_PER_DAY, settled);
      add(figures, "share of its sand that settles", Kind.PERCENT, Math.min(1, settled / fed));
    }
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

  /**
   * What a dilution box does at the balance of the longest mode, with its rinse.
   *
   * @param model the plant
   * @param box the dilution box
   * @param feed mean flow into the unit
   * @return capture by each outlook; empty when nothing flows or the liquor is too thick to flow
   */
  public static Optional<BoxResult> box(PlantModel model, BoxUnit box, Stream feed) {
    return SeparatorUnit.rinsed(
            feed,
            box.box(),
            model.rinseM3ps(box, model.longestMode(), Case.BASE),
            box.runningShare(),
            model.liquor(),
            box.shearRatePs())
        .map(seen -> seen.box().evaluate(seen.feed(), model.organic(seen.feed())));
  }

  private static void box(List<Figure> figures, Stream feed, BoxUnit spec, BoxResult result) {
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

  /**
   * What a hydrocyclone does with a feed.
   *
   * @param model the plant
   * @param cyclone the hydrocyclone
   * @param by model of cut size and split
   * @param feed mean flow into the unit
   * @return cut size, split and power; empty when nothing flows or the liquor is too thick to flow
   */
  public static Optional<CycloneResult> cyclone(
      PlantModel model, CycloneUnit cyclone, HydrocycloneModel by, Stream feed) {
    return model
        .liquor()
        .settling(feed, cyclone.runningShare(), cyclone.shearRatePs())
        .map(seen -> cyclone.cyclone().evaluate(seen, by));
  }

  private static void cyclone(
      List<Figure> figures, PlantModel model, CycloneUnit cyclone, Stream feed) {
    Optional<UnitFeed> seen =
        model.liquor().settling(feed, cyclone.runningShare(), cyclone.shearRatePs());
    if (seen.isEmpty()) {
      return;
    }
    liquor(figures, feed, seen.get());
    for (HydrocycloneModel by : HydrocycloneModels.FAMILY.all()) {
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

  /**
   * What enters a lane while it runs.
   *
   * @param model the plant
   * @param lane the lane
   * @param feed mean flow into the unit
   * @return feed with the viscosity at the shear rate of the first reach; empty when nothing flows
   */
  public static Optional<UnitFeed> laneFeed(PlantModel model, LaneUnit lane, Stream feed) {
    double flow = feed.volumeM3ps() / lane.runningShare();
    if (!(flow > 0)) {
      return Optional.empty();
    }
    ChannelFlow channel = lane.reaches().get(0).flow(flow, lane.depositsM().get(0));
    return model
        .liquor()
        .settling(feed, lane.runningShare(), 3 * channel.velocityMps() / channel.depthM());
  }

  /**
   * How a lane fills with sand from its clean floor on.
   *
   * @param model the plant
   * @param lane the lane
   * @param feed mean flow into the unit
   * @return the filling, by the expected outlook; empty when nothing flows
   */
  public static Optional<LaneFilling> filling(PlantModel model, LaneUnit lane, Stream feed) {
    return laneFeed(model, lane, feed)
        .map(
            seen ->
                LaneFilling.of(
                    lane.reaches(),
                    seen,
                    model.organic(seen),
                    lane.runningShare(),
                    model.spec().porosity(),
                    Outlook.LIKELY,
                    LaneFilling.LEAST_KEPT));
  }

  /**
   * The lanes needed in turn while one fills, drains and is dug out.
   *
   * @param lane the lane
   * @param filling how the lane fills
   * @return the turn; empty when the lane does not fill
   */
  public static Optional<LaneTurn> turn(LaneUnit lane, LaneFilling filling) {
    return filling.intervalS().isPresent() && filling.intervalS().getAsDouble() > 0
        ? Optional.of(new LaneTurn(filling.intervalS().getAsDouble(), lane.drainS(), lane.digS()))
        : Optional.empty();
  }

  private static void lane(List<Figure> figures, PlantModel model, LaneUnit lane, Stream feed) {
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
                  model.organic(seen.get()),
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
    add(figures, "sand kept at the end", Kind.PERCENT, filling.lastRecovery());
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
    add(
        figures,
        "slope at which it stands, rise over run",
        Kind.NUMBER,
        Math.tan(stack.reposeRad()));
    if (!(dug > 0)) {
      return;
    }
    SandStack lying = stack(model, lane, filling);
    double height = lane.stackHeightM();
    add(figures, "sand in the stack while it lies", Kind.VOLUME, lying.volumeM3());
    add(figures, "length of the ground for it", Kind.LENGTH, lying.footLengthM(height));
    add(figures, "width of the ground for it", Kind.LENGTH, lying.footWidthM(height));
    add(figures, "size that 10 % of the deposit is finer than", Kind.GRAIN, d10M(model, filling));
    double permeability = SandStack.permeabilityMps(d10M(model, filling)).value();
    add(figures, "permeability by Hazen's rule, clean", Kind.FALL, permeability);
    add(figures, "least time to drain in the lane", Kind.DAYS, drainS(model, lane, filling));
    add(
        figures,
        "least time to drain in the stack",
        Kind.HOURS,
        SandStack.leastDrainTimeS(height, DRAINABLE, permeability));
  }

  /**
   * All sand in the stack of a lane at once.
   *
   * @param model the plant
   * @param lane the lane
   * @param filling how the lane fills
   * @return heap of every clean-out within the time in the stack
   */
  public static SandStack stack(PlantModel model, LaneUnit lane, LaneFilling filling) {
    double dug = filling.depositedKg().stream().mapToDouble(Double::doubleValue).sum();
    double times =
        filling.intervalS().isPresent() && filling.intervalS().getAsDouble() > 0
            ? Math.max(1, lane.stackS() / filling.intervalS().getAsDouble())
            : 1;
    return new SandStack(
        dug * times,
        model.constituents().sandDensityKgM3(),
        model.spec().porosity(),
        SandStack.DRY_SAND_RAD);
  }

  /**
   * Least time in which the water in a lane full of clean sand falls to a tenth.
   *
   * @param model the plant
   * @param lane the lane
   * @param filling how the lane fills
   * @return time [s]; 0 without sand
   */
  public static double drainS(PlantModel model, LaneUnit lane, LaneFilling filling) {
    LaneFilling.Point last = filling.points().get(filling.points().size() - 1);
    double deepest = last.depositsM().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return deepest > 0
        ? SandStack.laneDrainTimeS(
            lane.drainPathM(),
            deepest,
            DRAINABLE,
            SandStack.permeabilityMps(d10M(model, filling)).value(),
            DRAINED_TO)
        : 0;
  }

  /** Size that a tenth of what lies in a lane is finer than, between the bounds of its class. */
  private static double d10M(PlantModel model, LaneFilling filling) {
    List<SizeClass> classes = model.constituents().sandClasses();
    double all = filling.depositedKg().stream().mapToDouble(Double::doubleValue).sum();
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

  private static void cake(List<Figure> figures, CakeUnit cake, CakeResult result) {
    add(figures, "cake", Kind.MASS_PER_DAY, result.cakeKgps() * cake.runningShare());
    add(figures, "dry matter of the cake", Kind.PERCENT, result.solids());
  }

  /**
   * What the mixer of a pit does with its feed.
   *
   * @param model the plant
   * @param pit the pit
   * @param feed mean flow into the unit
   * @return suspension, power and residence time; empty without a mixer
   */
  public static Optional<PitMixing> mixing(PlantModel model, PitUnit pit, Stream feed) {
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

  /**
   * The feed of a pit at the shear rate at which its sand settles.
   *
   * @param model the plant
   * @param feed mean flow into the unit
   * @return the feed; empty when nothing flows
   */
  public static Optional<UnitFeed> mixingFeed(PlantModel model, Stream feed) {
    return model.liquor().settling(feed, 1, SettlingFloor.SHEAR_PS);
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
