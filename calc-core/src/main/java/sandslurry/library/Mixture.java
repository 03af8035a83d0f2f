package sandslurry.library;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.units.Measure;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;

/** Sand in a liquid: what a line carries. Immutable; checked where it is used. */
public final class Mixture {
  /** A design is whole only with a line; where none matters, any will do. */
  static final Line ANY_LINE =
      Line.of(Line.pipe("ASME B36.10M", "4 in", "Sch 40")).length(Amounts.m(1));

  private final DesignDraft parts;

  private Mixture(DesignDraft parts) {
    this.parts = parts;
  }

  private static Mixture of(String kind, Quantity<Temperature> temperature) {
    return new Mixture(
        DesignDraft.titled("mixture")
            .with("/carrier/kind", kind)
            .with("/carrier/temperature", Measure.TEMPERATURE, temperature));
  }

  /**
   * Clean water.
   *
   * @param temperature its temperature
   * @return the liquid, still without sand
   */
  public static Mixture ofWater(Quantity<Temperature> temperature) {
    return of("water", temperature);
  }

  /**
   * Manure liquor, known by its solids.
   *
   * @param temperature its temperature
   * @param totalSolids its total solids without sand, by mass
   * @return the liquid, still without sand
   */
  public static Mixture ofManure(
      Quantity<Temperature> temperature, Quantity<Dimensionless> totalSolids) {
    return of("manure", temperature).with("/carrier/totalSolids", Measure.FRACTION, totalSolids);
  }

  /**
   * A Newtonian liquid that was measured.
   *
   * @param temperature its temperature
   * @param density its density
   * @param viscosity its viscosity
   * @return the liquid, still without sand
   */
  public static Mixture ofLiquid(
      Quantity<Temperature> temperature,
      Quantity<Density> density,
      Quantity<DynamicViscosity> viscosity) {
    return of("measured", temperature)
        .with("/carrier/density", Measure.DENSITY, density)
        .with("/carrier/viscosity", Measure.VISCOSITY, viscosity);
  }

  /**
   * A Bingham liquid.
   *
   * @param temperature its temperature
   * @param density its density
   * @param yieldStress its yield stress
   * @param plasticViscosity its plastic viscosity
   * @return the liquid, still without sand
   */
  public static Mixture ofBingham(
      Quantity<Temperature> temperature,
      Quantity<Density> density,
      Quantity<Pressure> yieldStress,
      Quantity<DynamicViscosity> plasticViscosity) {
    return new Mixture(of("rheology", temperature).parts.with("/carrier/law", "Bingham"))
        .with("/carrier/density", Measure.DENSITY, density)
        .with("/carrier/yieldStress", Measure.PRESSURE, yieldStress)
        .with("/carrier/plasticViscosity", Measure.VISCOSITY, plasticViscosity);
  }

  /**
   * Adds sand of one size.
   *
   * @param size its grain size
   * @return the mixture with that sand
   */
  public Mixture sand(Quantity<Length> size) {
    return sand(size, size);
  }

  /**
   * Adds sand whose gradation is log-normal.
   *
   * @param d50 the size that half of it passes
   * @param d85 the size that 85 % of it passes
   * @return the mixture with that sand
   */
  public Mixture sand(Quantity<Length> d50, Quantity<Length> d85) {
    return with("/sand/d50", Measure.LENGTH, d50).with("/sand/d85", Measure.LENGTH, d85);
  }

  /**
   * Adds the sand of a standard.
   *
   * @param standard its name, {@code ASTM C33} or {@code ASTM C144}
   * @return the mixture with that sand
   */
  public Mixture sand(String standard) {
    return new Mixture(parts.with("/sand/gradation", standard));
  }

  /**
   * Says how much sand there is.
   *
   * @param fraction volume of sand over volume of mixture
   * @return the mixture with so much sand
   */
  public Mixture byVolume(Quantity<Dimensionless> fraction) {
    return with("/lines/0/mixture/volumeFraction", Measure.FRACTION, fraction);
  }

  /**
   * Says how much sand there is.
   *
   * @param fraction mass of sand over mass of mixture
   * @return the mixture with so much sand
   */
  public Mixture byMass(Quantity<Dimensionless> fraction) {
    return with("/lines/0/mixture/massFraction", Measure.FRACTION, fraction);
  }

  private <Q extends Quantity<Q>> Mixture with(String field, Measure<Q> measure, Quantity<Q> q) {
    return new Mixture(parts.with(field, measure, q));
  }

  DesignDraft in(DesignDraft design) {
    DesignDraft whole = design;
    for (String part : List.of("/sand", "/carrier", "/lines/0/mixture")) {
      whole = whole.part(part, parts);
    }
    return whole;
  }

  /**
   * How fast a single median grain settles in the liquid at rest.
   *
   * @return its terminal velocity by every author, the default first
   * @throws DesignProblems if the mixture is incomplete or outside its limits
   */
  public List<ByAuthor<Speed>> settlingVelocity() {
    Materials materials = Materials.of(ANY_LINE.carrying(this).design(Amounts.mps(1)));
    return SettlingResult.of(materials, 0).sizes().get(0).velocities().stream()
        .map(one -> ByAuthor.of(one.model(), one.estimate(), Measure.SPEED))
        .toList();
  }
}
