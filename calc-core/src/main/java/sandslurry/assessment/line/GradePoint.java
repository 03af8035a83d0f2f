package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec;
import sandslurry.units.Measure;

/**
 * One point of the hydraulic grade line.
 *
 * @param place where it is, such as "end of Buried line"
 * @param station length along the line from its start
 * @param elevation height above the start of the line
 * @param pressure gauge pressure
 * @param gradeLine height to which the mixture would stand in an open riser
 */
public record GradePoint(
    String place,
    Quantity<Length> station,
    Quantity<Length> elevation,
    Quantity<Pressure> pressure,
    Quantity<Length> gradeLine) {

  /**
   * The grade line of a line at one flow.
   *
   * @param route the line
   * @param state the line at that flow
   * @return start and end of every run, in the order of flow
   */
  public static List<GradePoint> of(RouteSpec route, LineState state) {
    double weight = Measure.DENSITY.si(state.mixtureDensity()) * Physics.GRAVITY;
    List<GradePoint> points = new ArrayList<>();
    double station = 0;
    double elevation = 0;
    for (int i = 0; i < route.runs().size(); i++) {
      RouteSpec.RunSpec spec = route.runs().get(i);
      RunState run = state.runs().get(i);
      points.add(at("start of " + spec.name(), station, elevation, run.startPressure(), weight));
      station += Measure.LENGTH.si(spec.length());
      elevation += Measure.LENGTH.si(spec.rise());
      points.add(at("end of " + spec.name(), station, elevation, run.endPressure(), weight));
    }
    return List.copyOf(points);
  }

  private static GradePoint at(
      String place, double station, double elevation, Quantity<Pressure> pressure, double weight) {
    return new GradePoint(
        place,
        Measure.LENGTH.of(station),
        Measure.LENGTH.of(elevation),
        pressure,
        Measure.LENGTH.of(elevation + Measure.PRESSURE.si(pressure) / weight));
  }
}
