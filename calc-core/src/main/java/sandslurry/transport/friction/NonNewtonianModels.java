package sandslurry.transport.friction;

import sandslurry.correlation.Family;

/** The catalogue of correlations for the flow of non-Newtonian liquids in pipes. */
public final class NonNewtonianModels {
  /** The turbulent law of the friction curve: the only one for every rheology. */
  static final WilsonThomas1985 DEFAULT = new WilsonThomas1985();

  /** The end of laminar flow of the friction curve: the only one for every rheology. */
  static final TransitionCriterion TRANSITION = new RyanJohnson1959();

  /** Every transition criterion. */
  public static final Family<TransitionCriterion> TRANSITIONS =
      Family.of("end of laminar pipe flow", TRANSITION, new SlatterWasp2000());

  /** Every turbulent law. */
  public static final Family<TurbulentFrictionModel> TURBULENT =
      Family.of(
          "turbulent friction of a non-Newtonian liquid",
          DEFAULT,
          new DodgeMetzner1959(),
          new DarbyMelson1981());

  private NonNewtonianModels() {}
}
