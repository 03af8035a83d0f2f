package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.List;
import sandslurry.design.plant.PlantSpec.FlushSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Water;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Flush;
import sandslurry.units.Kind;

/**
 * The flush of the alley of a pen.
 *
 * @param model the plant
 * @param pen a pen with a flush
 */
public record AlleyFlush(PlantModel model, PenSpec pen) {

  /**
   * The flush as it is given.
   *
   * @return its alley, volume and rate
   */
  public FlushSpec given() {
    return pen.flush().orElseThrow();
  }

  /**
   * Water of one flush, as the balance brings it.
   *
   * @param balance a steady balance of the plant
   * @return volume [m3]
   */
  public double waterM3(SteadyBalance balance) {
    return balance.stream(given().water()).volumeM3ps() * pen.pen().scrapingIntervalS();
  }

  /**
   * A grain at the upper bound of the coarsest class of the bedding sand.
   *
   * @return the grain
   */
  public Grain coarsest() {
    List<SizeClass> classes = model.constituents().sandClasses();
    return new Grain(
        classes.get(classes.size() - 1).highM(),
        model.constituents().sandDensityKgM3(),
        model.liquor().shape());
  }

  /**
   * The flush water, taken as clear: the thinnest liquid that it can be.
   *
   * @return density and viscosity at the temperature of the liquor
   */
  public Liquid water() {
    double temperature = model.liquor().temperatureK();
    return new Liquid(model.constituents().waterDensityKgM3(), Water.viscosityPaS(temperature));
  }

  /**
   * What the flush does, as rows of a table.
   *
   * @param balance a steady balance of the plant
   * @return figures
   */
  public List<Figure> figures(SteadyBalance balance) {
    List<Figure> figures = new ArrayList<>();
    Flush flush = given().flush();
    add(figures, "depth of the flush", Kind.DEPTH, flush.depthM());
    add(figures, "velocity of the flush", Kind.VELOCITY, flush.velocityMps());
    add(figures, "time that it lasts", Kind.TIME, flush.durationS());
    add(figures, "length of the wave", Kind.LENGTH, flush.waveM());
    add(figures, "wave over length of the alley", Kind.NUMBER, flush.waveM() / given().lengthM());
    add(figures, "stress on the floor", Kind.STRESS, flush.stressPa(water().densityKgM3()));
    add(
        figures,
        "stress that moves the coarsest sand",
        Kind.STRESS,
        Flush.movingStressPa(coarsest(), water()));
    add(figures, "shear velocity", Kind.FALL, flush.shearVelocityMps());
    add(
        figures,
        "slope for 5 ft/s at this depth",
        Kind.PERCENT,
        flush.slopeFor(Flush.PRACTICE_VELOCITY_MPS));
    add(figures, "water of one flush", Kind.VOLUME, given().volumeM3());
    add(figures, "water that the balance brings for one", Kind.VOLUME, waterM3(balance));
    return figures;
  }

  private static void add(List<Figure> figures, String what, Kind<?> kind, double value) {
    figures.add(new Figure(what, kind, Range.of(value)));
  }

  /** Tells how velocity and stress come about. */
  void steps(Trace trace) {
    Sheet sheet = Sheet.of(AlleyFlush.class, trace);
    sheet.begin("flush of pen " + pen.pen().name(), "");
    Flush flush = given().flush();
    double density = water().densityKgM3();
    double width = flush.alley().widthM();
    double depth = flush.depthM();
    double slope = flush.alley().slope();
    double radius = sheet.step("flush-radius", flush.alley().hydraulicRadiusM(depth), width, depth);
    double velocity =
        sheet.step("flush-velocity", flush.velocityMps(), radius, slope, flush.alley().manningN());
    sheet.step("flush-wave", flush.waveM(), velocity, flush.durationS());
    sheet.step("flush-stress", flush.stressPa(density), density, radius, slope);
  }
}
