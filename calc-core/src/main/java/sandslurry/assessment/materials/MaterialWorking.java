package sandslurry.assessment.materials;

import static sandslurry.fact.step.Working.in;

import java.util.List;
import sandslurry.design.Design;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Working;
import sandslurry.material.sand.Gradation;
import sandslurry.units.Kind;

/** The working behind the liquid and the sand. */
public final class MaterialWorking {
  private MaterialWorking() {}

  public static List<Step> steps(Design design, Materials materials, SettlingResult settling) {
    Working working = new Working("liquid and sand");
    double temperature = materials.carrier().temperatureK();
    String source = materials.carrier().description();
    working.step(
        "rho_l",
        "density of the carrier without sand",
        "property of the liquid at T",
        Kind.DENSITY,
        materials.carrier().densityKgM3(),
        source,
        in("T", Kind.TEMPERATURE, temperature));
    working.step(
        "p_v",
        "vapour pressure of the carrier, absolute",
        "property of water at T",
        Kind.PRESSURE,
        materials.carrier().vapourPressurePa(),
        "IAPWS (see the theory page on carrier and sand)",
        in("T", Kind.TEMPERATURE, temperature));
    String gradation = design.sand().source();
    working.step(
        "x_f",
        "share of fines, which belong to the liquid",
        "passing " + Kind.GRAIN.number(sandslurry.units.UnitSystem.METRIC, 75e-6) + " mm",
        Kind.PERCENT,
        materials.finesShare(),
        gradation);
    working.step(
        "d50",
        "size that half of the coarser sand passes",
        "log-linear between the sieves, fines left out",
        Kind.GRAIN,
        materials.coarse().d50M(),
        gradation,
        in("boundary", Kind.GRAIN, Gradation.FINES_BOUNDARY_M));
    working.step(
        "d85",
        "size that 85 % of the coarser sand passes",
        "log-linear between the sieves, fines left out",
        Kind.GRAIN,
        materials.coarse().d85M(),
        gradation,
        in("boundary", Kind.GRAIN, Gradation.FINES_BOUNDARY_M));
    settling.sizes().forEach(size -> settling(working, materials, size));
    return working.steps();
  }

  private static void settling(Working working, Materials materials, SettlingResult.OfSize size) {
    if (size.chosen().isEmpty()) {
      return;
    }
    SettlingResult.Chosen chosen = size.chosen().get();
    for (ModelValue value : size.velocities()) {
      working.step(
          "w",
          "settling velocity of a grain of "
              + size.name()
              + (value.estimate().inRange() ? "" : ", out of range"),
          value.model(),
          Kind.FALL,
          value.estimate().value(),
          in("d", Kind.GRAIN, size.sizeM()),
          in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()),
          in("rho", Kind.DENSITY, materials.carrier().densityKgM3()),
          in("mu", Kind.VISCOSITY, chosen.viscosityPaS()));
    }
    double reynolds =
        working.step(
            "Re_p",
            "Reynolds number of the grain of " + size.name(),
            "Re_p = w d rho / mu, w by " + chosen.model().name(),
            Kind.NUMBER,
            chosen.velocityMps()
                * size.sizeM()
                * materials.carrier().densityKgM3()
                / chosen.viscosityPaS(),
            "definition",
            in("w", Kind.FALL, chosen.velocityMps()),
            in("d", Kind.GRAIN, size.sizeM()));
    for (ModelValue value : size.hinderedExponents()) {
      working.step(
          "n",
          "exponent of hindered settling for " + size.name(),
          value.model(),
          Kind.NUMBER,
          value.estimate().value(),
          in("Re_p", Kind.NUMBER, reynolds));
    }
  }
}
