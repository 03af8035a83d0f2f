package sandslurry.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sandslurry.assessment.LaneCourse.KeptClass;
import sandslurry.design.LaneSpec;
import sandslurry.design.UnitSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.material.liquid.Water;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.lane.LaneDeposit;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.units.Measure;

/** The courses of the lanes of a design. */
final class LaneCourses {
  /** From a basin to well above the velocities of grit chambers [m/s]. */
  private static final List<Double> VELOCITIES_MPS =
      IntStream.rangeClosed(1, 30).mapToObj(i -> 0.02 * i).toList();

  private LaneCourses() {}

  /** The course of a lane that stands for itself, from its clean floor on. */
  static LaneCourse of(LaneSpec spec, LaneEvaluation lane, OptionalDouble totalSolids) {
    LaneReach reach =
        new LaneReach(
            lane.channel(),
            Measure.LENGTH.si(spec.length()),
            spec.depth().isPresent()
                ? OptionalDouble.of(Measure.LENGTH.si(spec.depth().get()))
                : OptionalDouble.empty(),
            Measure.LENGTH.si(spec.sandStorageDepth()),
            1);
    UnitFeed feed = lane.unitFeed(ManureSolids.FRESH, totalSolids.orElse(0));
    OrganicMatter organic =
        OrganicMatter.FEEDLOT.in(
            feed.liquid().viscosityPaS() / Water.viscosityPaS(lane.temperatureK()));
    double porosity = SettlingLane.USUAL_POROSITY;
    LaneFilling filling =
        LaneFilling.of(
            List.of(reach),
            feed,
            organic,
            lane.feed().runningShare(),
            porosity,
            Outlook.LIKELY,
            PlantUnits.LEAST_KEPT);
    boolean known = totalSolids.orElse(0) > 0;
    return course(List.of(reach), List.of(0.0), feed, organic, porosity, known, filling);
  }

  /** The courses of the lanes of a plant, by name, at the balance of its longest mode. */
  static Map<String, LaneCourse> of(PlantModel model, SteadyBalance balance) {
    Map<String, LaneCourse> courses = new LinkedHashMap<>();
    for (UnitSpec unit : model.spec().units()) {
      if (unit instanceof LaneUnitSpec lane) {
        PlantUnits.laneFeed(model, lane, balance.feed(lane.name()))
            .ifPresent(
                feed ->
                    courses.put(
                        lane.name() + " (plant)",
                        course(
                            lane.reaches(),
                            lane.depositsM(),
                            feed,
                            model.organic(feed),
                            model.spec().porosity(),
                            true,
                            PlantUnits.filling(model, lane, balance.feed(lane.name()))
                                .orElseThrow())));
      }
    }
    return courses;
  }

  private static LaneCourse course(
      List<LaneReach> reaches,
      List<Double> depositsM,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity,
      boolean organicMatterKnown,
      LaneFilling filling) {
    LaneReach first = reaches.get(0);
    double own = first.flow(feed.mixtureM3ps(), 0).velocityMps();
    return new LaneCourse(
        trade(first, VELOCITIES_MPS, feed, organic, porosity),
        trade(first, List.of(own), feed, organic, porosity).get(0),
        organicMatterKnown,
        classes(reaches, depositsM, feed, organic, porosity),
        filling);
  }

  /** The trade, which ends where the flow would become critical. */
  private static List<LaneTrade> trade(
      LaneReach reach,
      List<Double> velocitiesMps,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity) {
    List<LaneTrade> trade = new ArrayList<>();
    for (LaneTrade point :
        LaneTrade.curve(reach, velocitiesMps, feed, organic, porosity, Outlook.LIKELY)) {
      if (trade.isEmpty()
          || point.velocityMps() > trade.get(trade.size() - 1).velocityMps() * (1 + 1e-6)) {
        trade.add(point);
      }
    }
    return trade;
  }

  private static List<KeptClass> classes(
      List<LaneReach> reaches,
      List<Double> depositsM,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity) {
    List<List<Double>> kept = new ArrayList<>();
    for (Outlook outlook : Outlook.values()) {
      kept.add(
          LaneDeposit.of(reaches, depositsM, feed, organic, porosity, outlook).partition().sand());
    }
    List<KeptClass> classes = new ArrayList<>();
    for (int i = 0; i < feed.sizesM().size(); i++) {
      classes.add(
          new KeptClass(
              feed.sizesM().get(i),
              kept.get(Outlook.CAUTIOUS.ordinal()).get(i),
              kept.get(Outlook.LIKELY.ordinal()).get(i),
              kept.get(Outlook.HOPEFUL.ordinal()).get(i)));
    }
    return classes;
  }
}
