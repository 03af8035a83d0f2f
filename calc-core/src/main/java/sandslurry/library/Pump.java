package sandslurry.library;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.Design;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** A centrifugal pump by its curve with water. Immutable; checked where it is used. */
public final class Pump {
  private static final String POINTS = "/lines/0/pump/curve";

  private final DesignDraft parts;

  private Pump(DesignDraft parts) {
    this.parts = parts;
  }

  /**
   * A pump whose curve was measured at a speed.
   *
   * @param curveSpeed the speed of the curve
   * @param impeller diameter of the impeller
   * @return the pump; its curve is still to be given
   */
  public static Pump of(Quantity<Frequency> curveSpeed, Quantity<Length> impeller) {
    return new Pump(
        DesignDraft.titled("pump")
            .with("/lines/0/pump/kind", "rotodynamic")
            .with("/lines/0/pump/curveSpeed", Measure.ROTATION, curveSpeed)
            .with("/lines/0/pump/impeller", Measure.LENGTH, impeller));
  }

  /**
   * Adds a point of the curve, from shut-off on.
   *
   * @param flow flow rate of water
   * @param head head
   * @param efficiency efficiency
   * @return the pump
   */
  public Pump point(
      Quantity<VolumetricFlowRate> flow,
      Quantity<Length> head,
      Quantity<Dimensionless> efficiency) {
    String point = POINTS + "/" + parts.size(POINTS);
    return new Pump(
        parts
            .with(point + "/flow", Measure.FLOW, flow)
            .with(point + "/head", Measure.LENGTH, head)
            .with(point + "/efficiency", Measure.FRACTION, efficiency));
  }

  /**
   * Gives the speed at which it runs.
   *
   * @param speed the speed
   * @return the pump
   */
  public Pump speed(Quantity<Frequency> speed) {
    return new Pump(parts.with("/lines/0/pump/speed", Measure.ROTATION, speed));
  }

  DesignDraft in(DesignDraft design) {
    return design.part("/lines/0/pump", parts);
  }

  /**
   * Where the pump meets a line, its curve derated for sand and viscosity.
   *
   * @param line the line with what it carries
   * @return the duty points
   * @throws DesignProblems if pump or line are incomplete or outside their limits
   */
  public DutyPoints dutyPoints(Line line) {
    Design design =
        in(line.in(DesignDraft.titled("pump on its line")))
            .with("/lines/0/flow/design", Measure.FLOW, line.flowRate(Amounts.mps(2)))
            .design();
    Materials materials = Materials.of(design);
    LineModel model = new LineModel(materials);
    PumpResult result = new PumpEvaluation(model).result();
    return new DutyPoints(
        result.duties().stream().map(Duty::of).toList(), result.governing().map(Duty::of));
  }

  /**
   * The duty points of a pump on a line.
   *
   * @param all all of them, by flow rate
   * @param stable the one at which it runs, the stable one of the greatest flow rate; nothing where
   *     none is stable
   */
  public record DutyPoints(List<Duty> all, Optional<Duty> stable) {}

  /**
   * Where the pump meets its line.
   *
   * @param flow flow rate of slurry
   * @param head head of slurry
   * @param shaftPower power at the shaft
   */
  public record Duty(
      Quantity<VolumetricFlowRate> flow, Quantity<Length> head, Quantity<Power> shaftPower) {
    private static Duty of(PumpResult.Duty found) {
      return new Duty(
          Measure.FLOW.of(found.flowM3ps()),
          Measure.LENGTH.of(found.headM()),
          Measure.POWER.of(found.shaftW()));
    }
  }
}
