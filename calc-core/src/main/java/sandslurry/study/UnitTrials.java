package sandslurry.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantModel.Liquors;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.unit.LaneUnitResult;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.separation.lane.LaneClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneResult;
import sandslurry.study.UnitSizing.Aim;
import sandslurry.study.UnitSizing.Measured;
import sandslurry.units.InUnit;

/** What a unit does at sizes that are tried out, with each feed that it is to be sized for. */
abstract class UnitTrials {
  /** Nobody plans further, and a search needs a number. */
  private static final double LONG_S = InUnit.DAY.si(100 * PlantTotals.YEAR_D);

  /** What flows into a unit. */
  record Feed(String words, OptionalDouble liquorK, Optional<Stream> stream) {
    static final Feed AVERAGE = new Feed("average", OptionalDouble.empty(), Optional.empty());
  }

  /** Nothing is asked of grains. */
  static Measured measured(OptionalDouble value) {
    return new Measured(Math.min(value.orElse(LONG_S), LONG_S), OptionalDouble.empty(), 0, false);
  }

  abstract List<Feed> feeds();

  /** What comes of a design; nothing where it cannot be read or comes to no balance. */
  final Measured measure(DesignDocument sized, Feed feed) {
    return sized
        .read()
        .design()
        .flatMap(design -> measure(design, feed))
        .orElse(new Measured(0, OptionalDouble.empty(), 0, false));
  }

  abstract Optional<Measured> measure(Design design, Feed feed);

  static UnitTrials of(DesignDocument document, Assessment before, String unit, Aim aim) {
    return before.plant().isPresent()
            && before.design().plant().orElseThrow().units().stream()
                .anyMatch(one -> one.name().equals(unit))
        ? new OfPlant(
            new PlantModel(document.read().design().orElseThrow()), before.plant().get(), unit, aim)
        : new OfLane(aim);
  }

  /** The settling lane of the design. */
  private static final class OfLane extends UnitTrials {
    private final Aim aim;

    OfLane(Aim aim) {
      this.aim = aim;
    }

    @Override
    List<Feed> feeds() {
      return List.of(Feed.AVERAGE);
    }

    @Override
    Optional<Measured> measure(Design design, Feed feed) {
      return Evaluation.assess(design).lane().map(this::of);
    }

    private Measured of(LaneResult lane) {
      LaneFilling filling = lane.cycle().likely();
      return switch (aim) {
        case RETENTION -> measured(OptionalDouble.of(lane.residenceTimeS()));
        case INTERVAL -> measured(filling.intervalS());
        default -> captured(lane, filling.meanRecovery());
      };
    }

    private static Measured captured(LaneResult lane, double recovery) {
      OptionalDouble half = OptionalDouble.empty();
      double finer = 0;
      for (LaneClass one : lane.classes()) {
        if (one.kept().likely() < 0.5) {
          half = OptionalDouble.of(Math.max(half.orElse(0), one.size().highM()));
          finer += one.share();
        }
      }
      return new Measured(recovery, half, finer, false);
    }
  }

  /** A unit of a plant, in the balance of the whole plant. */
  private static final class OfPlant extends UnitTrials {
    private final PlantResult before;
    private final String unit;
    private final Aim aim;
    private final PlantDay day;
    private final Map<ModeSpec, SteadyBalance> near = new LinkedHashMap<>();
    private final List<Feed> feeds = new ArrayList<>(List.of(Feed.AVERAGE));

    OfPlant(PlantModel model, PlantResult before, String unit, Aim aim) {
      this.before = before;
      this.unit = unit;
      this.aim = aim;
      if (before.accounts().isEmpty()) {
        this.day = null;
        return;
      }
      before.modes().forEach(mode -> near.put(mode.mode(), mode.balance().orElseThrow()));
      this.day = PlantDay.of(model, before.modes(), before.days());
      if (aim != Aim.INTERVAL && !model.seasonsK().isEmpty()) {
        feeds.add(
            new Feed(
                "coldest liquor",
                OptionalDouble.of(Collections.min(model.seasonsK())),
                Optional.empty()));
      }
      if (aim == Aim.CAPTURE || aim == Aim.RETENTION) {
        before.days().last().ifPresent(last -> peaks(model, last));
      }
    }

    private void peaks(PlantModel model, Day last) {
      if (last.units().containsKey(unit)) {
        feeds.add(
            new Feed(
                "greatest hour",
                OptionalDouble.empty(),
                Optional.of(last.units().get(unit).peakFeed())));
      }
      List<String> inlets = find(model).inlets();
      if (aim == Aim.CAPTURE && last.streams().keySet().containsAll(inlets)) {
        feeds.add(
            new Feed(
                "sandiest moment",
                OptionalDouble.empty(),
                Optional.of(
                    Stream.mix(
                        model.constituents(),
                        inlets.stream()
                            .map(name -> last.streams().get(name).sandiest())
                            .toList()))));
      }
    }

    private PlantUnit find(PlantModel model) {
      return model.spec().units().stream()
          .filter(one -> one.name().equals(unit))
          .findFirst()
          .orElseThrow();
    }

    @Override
    List<Feed> feeds() {
      return near.isEmpty() ? List.of() : feeds;
    }

    @Override
    Optional<Measured> measure(Design design, Feed feed) {
      PlantModel model = new PlantModel(design);
      PlantUnit here = find(model);
      if (feed.stream().isPresent()) {
        Stream stream = feed.stream().get();
        return Optional.of(
            aim == Aim.RETENTION
                ? measured(model.staysS(here, stream))
                : captured(stream, model.at(here, stream).outlet(stream, 0), false));
      }
      Case one =
          feed.liquorK().isPresent()
              ? Case.BASE.in(Liquors.at(feed.liquorK().getAsDouble()))
              : Case.BASE;
      return PlantDay.atRest(model, one, near).map(found -> measured(model, here, found));
    }

    private Measured measured(
        PlantModel model, PlantUnit here, Map<ModeSpec, SteadyBalance> balances) {
      PlantTotals totals = model.totals();
      Map<String, Stream> flows = PlantDay.weighted(model, balances);
      Stream feed = totals.sum(flows, here.inlets());
      return switch (aim) {
        case CAPTURE ->
            captured(
                feed,
                flows.get(here.outlets().get(0)),
                balances.values().stream()
                    .flatMap(balance -> balance.notes().stream())
                    .anyMatch(
                        note ->
                            note.unit().equals(unit)
                                && note.reason() == UnitNote.Reason.TOO_THICK));
        case RECOVERY ->
            new Measured(
                totals.capture(day.byDay(totals, flows)), OptionalDouble.empty(), 0, false);
        case RETENTION -> measured(here.staysS(feed, seen(here, balances)));
        case INTERVAL -> measured(interval(model, here, flows, balances));
      };
    }

    /** Share of the time in which it sees its feed: the mean flow over it is that of its pump. */
    private static double seen(PlantUnit here, Map<ModeSpec, SteadyBalance> balances) {
      double seen = 0;
      double hours = 0;
      for (Map.Entry<ModeSpec, SteadyBalance> one : balances.entrySet()) {
        double runs = one.getKey().toS() - one.getKey().fromS();
        hours += runs;
        seen += runs * here.seen(one.getValue());
      }
      return seen / hours;
    }

    private OptionalDouble interval(
        PlantModel model,
        PlantUnit here,
        Map<String, Stream> flows,
        Map<ModeSpec, SteadyBalance> balances) {
      return here.asPit()
          .map(pit -> pit.fillsS(flows.get(pit.settled()), model.spec().porosity(), LONG_S))
          .orElseGet(
              () ->
                  model
                      .at(here, balances.get(before.main().mode()))
                      .lane()
                      .map(LaneUnitResult::filling)
                      .map(LaneFilling::intervalS)
                      .orElse(OptionalDouble.empty()));
    }

    /** Share captured, and the coarsest class of which less than half is. */
    private static Measured captured(Stream feed, Stream kept, boolean tooThick) {
      if (!(feed.sandKgps() > 0)) {
        return measured(OptionalDouble.empty());
      }
      List<SizeClass> classes = feed.constituents().sandClasses();
      OptionalDouble half = OptionalDouble.empty();
      double finer = 0;
      for (int k = 0; k < classes.size(); k++) {
        if (feed.sandKgps(k) > 0 && kept.sandKgps(k) < feed.sandKgps(k) / 2) {
          half = OptionalDouble.of(Math.max(half.orElse(0), classes.get(k).highM()));
          finer += feed.sandKgps(k);
        }
      }
      return new Measured(
          Math.min(1, kept.sandKgps() / feed.sandKgps()), half, finer / feed.sandKgps(), tooThick);
    }
  }
}
