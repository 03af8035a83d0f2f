package sandslurry.assessment.materials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.settling.ShearSettling;

/**
 * How fast grains of the sand fall in the carrier at rest, by every correlation.
 *
 * @param sizes the sizes looked at
 */
public record SettlingResult(List<OfSize> sizes) {
  /** Copies the list. */
  public SettlingResult {
    sizes = List.copyOf(sizes);
  }

  /**
   * One size of grain.
   *
   * @param name what the size is: d50 or d85
   * @param sizeM the size [m]
   * @param chosen the correlation that applies to this grain; empty when the yield stress of the
   *     carrier holds the grain at rest
   * @param velocities velocity [m/s] by every correlation; empty when it is held
   * @param hinderedFactor velocity in the crowd over velocity alone, by the first
   */
  public record OfSize(
      String name,
      double sizeM,
      Optional<Chosen> chosen,
      List<ModelValue> velocities,
      double hinderedFactor) {
    /** Copies the lists. */
    public OfSize {
      velocities = List.copyOf(velocities);
    }
  }

  /**
   * The correlation that applies to a grain.
   *
   * @param model the correlation
   * @param viscosityPaS viscosity of the carrier as the falling grain shears it [Pa.s]
   */
  public record Chosen(SettlingVelocityModel model, double viscosityPaS) {}

  /**
   * Settling velocity of the d50 and the d85 grain in the carrier at rest.
   *
   * @param materials liquid and sand
   * @param volumeFraction volume fraction of sand that hinders the fall
   * @return one result for each size
   */
  public static SettlingResult of(Materials materials, double volumeFraction) {
    List<OfSize> sizes = new ArrayList<>();
    sizes.add(ofSize("d50", materials.coarse().d50M(), materials, volumeFraction));
    sizes.add(ofSize("d85", materials.coarse().d85M(), materials, volumeFraction));
    return new SettlingResult(sizes);
  }

  private static OfSize ofSize(
      String name, double sizeM, Materials materials, double volumeFraction) {
    Grain grain = new Grain(sizeM, materials.sandDensityKgM3(), materials.design().sand().shape());
    Rheology rheology = materials.carrier().rheology();
    double density = materials.carrier().densityKgM3();
    double atRest =
        ShearSettling.atRest(grain, rheology, density, SettlingVelocities.DEFAULT).value();
    if (!(atRest > 0)) {
      return new OfSize(name, sizeM, Optional.empty(), List.of(), 0);
    }
    // The falling grain shears the liquid at about w/d.
    Liquid liquid = new Liquid(density, rheology.apparentViscosityPaS(atRest / sizeM));
    SettlingVelocityModel chosen = SettlingVelocities.applicable(grain, liquid);
    double velocity = chosen.velocityMps(grain, liquid).value();
    double reynolds = velocity * sizeM / liquid.kinematicViscosityM2ps();
    List<ModelValue> velocities = new ArrayList<>();
    for (SettlingVelocityModel model : SettlingVelocities.FAMILY.all()) {
      velocities.add(new ModelValue(model, model.velocityMps(grain, liquid)));
    }
    return new OfSize(
        name,
        sizeM,
        Optional.of(new Chosen(chosen, liquid.viscosityPaS())),
        velocities,
        HinderedSettlings.DEFAULT.factor(reynolds, volumeFraction).value());
  }
}
