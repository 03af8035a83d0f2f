package sandslurry.assessment.line;

import java.util.Optional;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.NonNewtonianFriction;

/**
 * How the carrier alone flows through a pipe.
 *
 * @param newtonian its friction when it is Newtonian
 * @param wallViscosityPaS apparent viscosity at the wall [Pa.s]
 * @param wallShearRatePs shear rate at the wall [1/s]
 * @param reynolds Reynolds number, of Metzner and Reed for a carrier that is not Newtonian
 * @param gradient metres of carrier per metre of pipe
 */
public record CarrierFlow(
    Optional<ClearLiquid> newtonian,
    double wallViscosityPaS,
    double wallShearRatePs,
    double reynolds,
    double gradient) {
  static CarrierFlow of(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps, PipeLiquids liquids) {
    if (rheology.isNewtonian()) {
      ClearLiquid clear =
          ClearLiquid.of(new Liquid(densityKgM3, rheology.consistency()), bore, velocityMps);
      double stress = clear.pressureGradientPaPm() * bore.diameterM() / 4;
      return new CarrierFlow(
          Optional.of(clear),
          rheology.consistency(),
          stress / rheology.consistency(),
          clear.reynolds(),
          clear.gradient());
    }
    NonNewtonianFriction.Friction friction =
        liquids.of(rheology, densityKgM3, bore).at(velocityMps);
    return new CarrierFlow(
        Optional.empty(),
        friction.wallViscosityPaS(),
        friction.wallShearRatePs(),
        friction.reynolds(),
        friction.pressureGradientPaPm() / (densityKgM3 * Physics.GRAVITY));
  }

  /** How it flows, without its friction. */
  static Regime regime(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps, PipeLiquids liquids) {
    return rheology.isNewtonian()
        ? ClearLiquid.regime(densityKgM3 * velocityMps * bore.diameterM() / rheology.consistency())
        : liquids.of(rheology, densityKgM3, bore).regime(velocityMps);
  }
}
