package sandslurry.assessment.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.pump.derating.RepresentativeViscosity;
import sandslurry.pump.derating.SolidsDerating;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.ViscousCorrection;

/**
 * What was found of the pump on its line.
 *
 * @param duties where pump and line meet, ascending by flow; one for a piston pump
 * @param absence why there is no stable duty point; empty when there is one, or when all that there
 *     is to say is that none is stable
 * @param curve the pump's head with solids against flow, for the chart; empty for a piston pump
 * @param deratings head ratios by every derating method; empty for a piston pump
 * @param deratedBy the derating method that is used; empty for a piston pump
 * @param headRatio head with solids over head without, as used
 * @param efficiencyRatio efficiency with solids over efficiency without, as used
 * @param viscous what the liquid takes by every representative viscosity; empty for a piston pump
 * @param shutOffPa gauge pressure at the line start when the line is blocked
 */
public record PumpResult(
    List<Duty> duties,
    Optional<String> absence,
    List<CurvePoint> curve,
    List<ModelValue> deratings,
    Optional<SolidsDerating> deratedBy,
    double headRatio,
    double efficiencyRatio,
    List<Viscous> viscous,
    double shutOffPa) {
  /** Copies the lists. */
  public PumpResult {
    duties = List.copyOf(duties);
    curve = List.copyOf(curve);
    deratings = List.copyOf(deratings);
    viscous = List.copyOf(viscous);
  }

  /**
   * The duty on which the line is judged.
   *
   * @return the stable duty point of the greatest flow, if there is one
   */
  public Optional<Duty> governing() {
    return duties.stream().filter(d -> d.meeting() == Meeting.STABLE).reduce((a, b) -> b);
  }

  /**
   * The viscosity that is believed.
   *
   * @return that by which the pump is judged; empty for a piston pump
   */
  public Optional<Viscous> believed() {
    return viscous.stream().filter(Viscous::believed).findFirst();
  }

  /**
   * One viscosity by which the liquid may stand in the first pump.
   *
   * @param which which viscosity it is
   * @param viscosityPaS its value [Pa.s]
   * @param correction what it takes from the pump
   * @param believed whether the pump is judged by it
   */
  public record Viscous(
      RepresentativeViscosity which,
      double viscosityPaS,
      ViscousCorrection correction,
      boolean believed) {}

  /**
   * A point of the pump curve with solids.
   *
   * @param flowM3ps flow of mixture
   * @param headM head in metres of mixture
   */
  public record CurvePoint(double flowM3ps, double headM) {}

  /**
   * One duty point.
   *
   * @param flowM3ps flow of mixture
   * @param headM head in metres of mixture
   * @param pressurePa pressure rise of the pump
   * @param meeting how the curves meet
   * @param overBed true when sand lies in some run at this flow
   * @param efficiency pump efficiency with solids
   * @param shaftW power at the pump shaft
   * @param inputW power drawn by the drive
   * @param sandEnergyJpKg energy drawn per mass of sand moved; empty without sand
   */
  public record Duty(
      double flowM3ps,
      double headM,
      double pressurePa,
      Meeting meeting,
      boolean overBed,
      double efficiency,
      double shaftW,
      double inputW,
      OptionalDouble sandEnergyJpKg) {}
}
