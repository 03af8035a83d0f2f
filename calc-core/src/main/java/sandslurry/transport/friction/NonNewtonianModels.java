package sandslurry.transport.friction;

import java.util.List;

/** The catalogue of correlations for the flow of non-Newtonian liquids in pipes. */
final class NonNewtonianModels {
  /** The turbulent law of the friction curve: the only one for every rheology. */
  public static final TurbulentFrictionModel TURBULENT = new WilsonThomas1985();

  /** The end of laminar flow of the friction curve: the only one for every rheology. */
  public static final TransitionCriterion TRANSITION = new RyanJohnson1959();

  private NonNewtonianModels() {}

  /**
   * Every turbulent law.
   *
   * @return the laws, the default first
   */
  public static List<TurbulentFrictionModel> turbulent() {
    return List.of(TURBULENT, new DodgeMetzner1959(), new DarbyMelson1981());
  }

  /**
   * Every transition criterion.
   *
   * @return the criteria, the default first
   */
  public static List<TransitionCriterion> transition() {
    return List.of(TRANSITION, new SlatterWasp2000());
  }
}
