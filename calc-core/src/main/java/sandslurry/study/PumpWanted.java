package sandslurry.study;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineState;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.SuctionSpec;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.pipe.Bore;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.pump.suction.SuctionHead;

/**
 * The duty to ask a supplier of pumps for, at the design flow rate.
 *
 * @param flowM3ps flow rate [m3/s]
 * @param slurryHeadM total dynamic head, metres of slurry [m]
 * @param waterHeadM head that the pump has to show on its curve for water: that of slurry over the
 *     head ratio for solids; equal to it without sand, empty where solids take all [m]
 * @param suctionM NPSH available at the pump, less what its suction line loses [m]
 * @param hydraulicW power that the slurry takes up [W]
 * @param largestGrainM size that 99 % of the sand passes; three of them should go through the pump
 *     side by side (common practice, no source) [m]
 */
public record PumpWanted(
    double flowM3ps,
    double slurryHeadM,
    OptionalDouble waterHeadM,
    double suctionM,
    double hydraulicW,
    double largestGrainM) {
  private static final double LARGEST = 0.99;

  /**
   * The duty of a line.
   *
   * @param sized the line in its pipe
   * @return the duty; nothing for a line that flows by itself or cannot flow
   */
  public static Optional<PumpWanted> of(SizedPipe sized) {
    Optional<LineState> state = sized.assessment().line().flatMap(l -> l.at(FlowCase.DESIGN));
    if (state.isEmpty() || !(sized.headM().orElse(0) > 0)) {
      return Optional.empty();
    }
    double head = sized.headM().getAsDouble();
    Design design = sized.assessment().design();
    double density = state.get().mixtureDensityKgM3();
    double altitude = design.service().suction().map(SuctionSpec::altitudeM).orElse(0.0);
    return Optional.of(
        new PumpWanted(
            state.get().flowM3ps(),
            head,
            waterHeadM(head, headRatio(sized, state.get())),
            SuctionHead.atSiteM(
                    altitude,
                    sized.assessment().carrier().temperatureK(),
                    density,
                    design.oneLine().route().sourceLevelM(),
                    0)
                .value(),
            sized.hydraulicW().getAsDouble(),
            coarse(design).sizePassingM(LARGEST)));
  }

  private static OptionalDouble waterHeadM(double slurryHeadM, double ratio) {
    return ratio > 0 ? OptionalDouble.of(slurryHeadM / ratio) : OptionalDouble.empty();
  }

  private static Gradation coarse(Design design) {
    return design.sand().gradation().withoutFines();
  }

  /** By the derating that governs for a pump of which no more is known. */
  private static double headRatio(SizedPipe sized, LineState state) {
    double fraction = state.sandFraction();
    if (!(fraction > 0)) {
      return 1;
    }
    Assessment assessment = sized.assessment();
    Gradation coarse = coarse(assessment.design());
    Bore bore = new Bore(sized.pipe().meanBoreM(), 0);
    double velocity = bore.velocityMps(state.flowM3ps());
    Liquid liquid = assessment.carrier().liquidAt(8 * velocity / bore.diameterM());
    Slurry slurry =
        new Slurry(
            liquid,
            assessment.design().sand().densityKgM3(),
            assessment.design().sand().shape(),
            coarse.d50M(),
            coarse.d85M(),
            fraction);
    return SolidsDeratings.governing(slurry, OptionalDouble.empty()).headRatio().value();
  }
}
