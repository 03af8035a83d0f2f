package sandslurry.assessment.materials;

import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
import sandslurry.settling.HinderedSettlings;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The working behind the liquid and the sand. */
public final class MaterialWorking {
  private static final Equations EQUATIONS = Equations.of(MaterialWorking.class);
  private static final Equation RELATIVE = EQUATIONS.of("relative", Kind.NUMBER);
  private static final Equation KINEMATIC = EQUATIONS.of("kinematic", Kind.KINEMATIC_VISCOSITY);
  private static final Equation REYNOLDS = EQUATIONS.of("reynolds", Kind.NUMBER);
  private static final Equation CROWD = EQUATIONS.of("crowd", Kind.NUMBER);

  private MaterialWorking() {}

  /**
   * Keeps the steps of liquid, sand and settling.
   *
   * @param trace what keeps the steps
   * @param materials its liquid, sand and mixture
   * @param settling settling velocities of its grains
   * @param volumeFraction volume fraction of sand that hinders the fall
   */
  public static void tell(
      Trace trace, Materials materials, SettlingResult settling, double volumeFraction) {
    trace.begin("liquid and sand", "");
    double temperature = materials.carrier().temperatureK();
    trace.step(
        Equation.lookup(
            "rho_l",
            "density of the liquid without sand",
            "property of the liquid at this temperature",
            Kind.DENSITY,
            materials.carrier().description(),
            "T K"),
        materials.carrier().densityKgM3(),
        temperature);
    trace.step(
        Equation.lookup(
            "p_v",
            "vapour pressure of the liquid, absolute",
            "property of water at this temperature",
            Kind.PRESSURE,
            "IAPWS (see the theory page on carrier and sand)",
            "T K"),
        materials.carrier().vapourPressurePa(),
        temperature);
    String gradation = materials.design().sand().source();
    String fines = UnitSystem.METRIC.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M);
    trace.step(
        Equation.lookup(
            "x_f",
            "share of fines, which belong to the liquid",
            "sand that passes " + fines + ", from the gradation",
            Kind.PERCENT,
            gradation),
        materials.finesShare());
    passing(trace, "d50", "50 %", materials.coarse().d50M(), gradation);
    passing(trace, "d85", "85 %", materials.coarse().d85M(), gradation);
    for (SettlingResult.OfSize size : settling.sizes()) {
      trace.begin("settling of one grain in liquid at rest", size.name());
      size.chosen().ifPresent(chosen -> settling(trace, materials, size, chosen, volumeFraction));
    }
  }

  private static void passing(
      Trace trace, String symbol, String share, double sizeM, String gradation) {
    trace.step(
        Equation.lookup(
            symbol,
            "size that " + share + " of the sand passes, fines left out",
            "gradation, log-linear between the sieves",
            Kind.GRAIN,
            gradation),
        sizeM);
  }

  private static void settling(
      Trace trace,
      Materials materials,
      SettlingResult.OfSize size,
      SettlingResult.Chosen chosen,
      double volumeFraction) {
    Liquid liquid = new Liquid(materials.carrier().densityKgM3(), chosen.viscosityPaS());
    Grain grain =
        new Grain(size.sizeM(), materials.sandDensityKgM3(), materials.design().sand().shape());
    double nu = liquid.kinematicViscosityM2ps();
    properties(trace, grain.densityKgM3(), liquid);
    double velocity = chosen.model().velocityMps(grain, liquid, trace).value();
    double reynolds =
        trace.step(REYNOLDS, velocity * size.sizeM() / nu, velocity, size.sizeM(), nu);
    double exponent = HinderedSettlings.DEFAULT.exponent(reynolds, volumeFraction, trace).value();
    trace.step(CROWD, size.hinderedFactor(), volumeFraction, exponent);
  }

  /**
   * Keeps R and ν, on which settling and deposition velocity rest.
   *
   * @param trace what keeps the steps
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param liquid the liquid at the shear rate in question
   */
  public static void properties(Trace trace, double sandDensityKgM3, Liquid liquid) {
    double rho = liquid.densityKgM3();
    trace.step(RELATIVE, sandDensityKgM3 / rho - 1, sandDensityKgM3, rho);
    trace.step(KINEMATIC, liquid.kinematicViscosityM2ps(), liquid.viscosityPaS(), rho);
  }
}
