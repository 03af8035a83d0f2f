package sandslurry.assessment.lane;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.lane.KeptClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.separation.lane.SettlingLane;

/** The courses of the lanes of a design. */
public final class LaneCourses {
  /** From a basin to well above the velocities of grit chambers [m/s]. */
  private static final List<Double> VELOCITIES_MPS =
      IntStream.rangeClosed(1, 30).mapToObj(i -> 0.02 * i).toList();

  private LaneCourses() {}

  /**
   * The course of a lane that stands alone, from its clean floor on.
   *
   * @param lane the lane
   * @param result what it captures
   * @return capture by class and velocity, and the filling
   */
  public static LaneCourse of(LaneEvaluation lane, LaneResult result) {
    return course(
        List.of(lane.reach()),
        List.of(0.0),
        lane.feed(),
        lane.organic(),
        SettlingLane.USUAL_POROSITY,
        lane.solidsKnown(),
        result.cycle().likely());
  }

  /**
   * The courses of the lanes of a plant, at the balance of its longest mode.
   *
   * @param model the plant
   * @param balance that balance
   * @return courses by name of the lane
   */
  public static Map<String, LaneCourse> of(PlantModel model, SteadyBalance balance) {
    Map<String, LaneCourse> courses = new LinkedHashMap<>();
    for (PlantUnit unit : model.spec().units()) {
      model
          .at(unit, balance)
          .lane()
          .ifPresent(
              lane ->
                  courses.put(
                      unit.name() + " (plant)",
                      course(
                          lane.unit().reaches(),
                          lane.unit().depositsM(),
                          lane.feed(),
                          lane.organic(),
                          lane.porosity(),
                          true,
                          lane.filling())));
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
        KeptClass.of(reaches, depositsM, feed),
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
}
