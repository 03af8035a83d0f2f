package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec;

/**
 * One point of the hydraulic grade line.
 *
 * @param place where it is, such as "end of Buried line"
 * @param stationM length along the line from its start
 * @param elevationM height above the start of the line
 * @param pressurePa gauge pressure
 * @param gradeLineM height to which the mixture would stand in an open riser
 */
public record GradePoint(
    String place, double stationM, double elevationM, double pressurePa, double gradeLineM) {

  /**
   * The grade line of a line at one flow.
   *
   * @param route the line
   * @param state the line at that flow
   * @return start and end of every run, in the order of flow
   */
  public static List<GradePoint> of(RouteSpec route, LineState state) {
    double weight = state.mixtureDensityKgM3() * Physics.GRAVITY;
    List<GradePoint> points = new ArrayList<>();
    double stationM = 0;
    double elevationM = 0;
    for (int i = 0; i < route.runs().size(); i++) {
      RouteSpec.RunSpec spec = route.runs().get(i);
      RunState run = state.runs().get(i);
      points.add(
          at("start of " + spec.name(), stationM, elevationM, run.pressures().startPa(), weight));
      stationM += spec.lengthM();
      elevationM += spec.riseM();
      points.add(
          at("end of " + spec.name(), stationM, elevationM, run.pressures().endPa(), weight));
    }
    return List.copyOf(points);
  }

  private static GradePoint at(
      String place, double stationM, double elevationM, double pressurePa, double weight) {
    return new GradePoint(
        place, stationM, elevationM, pressurePa, elevationM + pressurePa / weight);
  }
}
