package sandslurry.assessment.materials;

import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
import sandslurry.settling.HinderedSettlings;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The working behind the liquid and the sand. */
public final class MaterialWorking {

  private MaterialWorking() {}

  /**
   * Keeps the steps of liquid, sand and settling.
   *
   * @param trace what keeps the steps
   * @param materials its liquid, sand and mixture
   * @param settling settling velocities of its grains
   * @param volumeFraction volume fraction of sand that hinders the fall
   */
  public static void steps(
      Trace trace, Materials materials, SettlingResult settling, double volumeFraction) {
    Sheet sheet = Sheet.of(MaterialWorking.class, trace);
    sheet.begin("liquid and sand", "");
    Carrier carrier = materials.carrier();
    Sheet described = sheet.by(carrier.description());
    described.step("density", carrier.densityKgM3(), carrier.temperatureK());
    sheet.step("vapour-pressure", carrier.vapourPressurePa(), carrier.temperatureK());
    String source = materials.design().sand().source();
    String finest = UnitSystem.METRIC.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M);
    sheet.step(
        Equation.lookup(
            "x_f",
            "share of fines, which belong to the liquid",
            "sand that passes " + finest + ", from the gradation",
            Kind.PERCENT,
            source),
        materials.finesShare());
    Sheet gradation = sheet.by(source);
    gradation.step("d50", materials.coarse().d50M());
    gradation.step("d85", materials.coarse().d85M());
    for (SettlingResult.OfSize size : settling.sizes()) {
      sheet.begin("settling of one grain in liquid at rest", size.name());
      size.chosen().ifPresent(chosen -> settling(sheet, materials, size, chosen, volumeFraction));
    }
  }

  private static void settling(
      Sheet sheet,
      Materials materials,
      SettlingResult.OfSize size,
      SettlingResult.Chosen chosen,
      double volumeFraction) {
    Liquid liquid = new Liquid(materials.carrier().densityKgM3(), chosen.viscosityPaS());
    Grain grain =
        new Grain(size.sizeM(), materials.sandDensityKgM3(), materials.design().sand().shape());
    double nu = liquid.kinematicViscosityM2ps();
    properties(sheet.trace(), grain.densityKgM3(), liquid);
    double velocity = chosen.model().velocityMps(grain, liquid, sheet.trace()).value();
    double reynolds =
        sheet.step("reynolds", velocity * size.sizeM() / nu, velocity, size.sizeM(), nu);
    double exponent =
        HinderedSettlings.DEFAULT.exponent(reynolds, volumeFraction, sheet.trace()).value();
    sheet.step("crowd", size.hinderedFactor(), volumeFraction, exponent);
  }

  /**
   * Keeps R and ν, on which settling and deposition velocity rest.
   *
   * @param trace what keeps the steps
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param liquid the liquid at the shear rate in question
   */
  public static void properties(Trace trace, double sandDensityKgM3, Liquid liquid) {
    Sheet sheet = Sheet.of(MaterialWorking.class, trace);
    double rho = liquid.densityKgM3();
    sheet.step("relative", sandDensityKgM3 / rho - 1, sandDensityKgM3, rho);
    sheet.step("kinematic", liquid.kinematicViscosityM2ps(), liquid.viscosityPaS(), rho);
  }
}
