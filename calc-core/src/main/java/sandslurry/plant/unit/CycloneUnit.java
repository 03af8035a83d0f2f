package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Limits;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.units.Measure;

/**
 * Hydrocyclones side by side.
 *
 * @param name their name
 * @param inlets streams in
 * @param underflow stream of sand out
 * @param overflow stream of liquor out
 * @param runningShare share of the day that they run
 * @param cyclone the cyclones
 * @param model the model
 * @param shearRatePs shear rate at which the viscosity of the liquor counts [1/s]
 * @param pumpEfficiency efficiency of feed pump and motor
 */
public record CycloneUnit(
    String name,
    List<String> inlets,
    String underflow,
    String overflow,
    double runningShare,
    Hydrocyclone cyclone,
    HydrocycloneModel model,
    double shearRatePs,
    double pumpEfficiency)
    implements PlantUnit {
  @Override
  public List<String> outlets() {
    return List.of(underflow, overflow);
  }

  @Override
  public List<String> byGravity() {
    return outlets();
  }

  @Override
  public boolean fedByPump() {
    return true;
  }

  @Override
  public String kind() {
    return "cyclone";
  }

  /** Hydrocyclones side by side. */
  static final class CycloneFields extends UnitFields.HeldFields {
    private final Field<String> under =
        stream("underflow", "Underflow stream", "the stream of sand", "underflow");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream of liquor", "cyclone overflow");
    private final Field<Double> body =
        needed("body", SMALL, "Body diameter", "inside diameter of the body", "250 mm", "10 in");
    private final Field<Double> apex =
        needed("apex", SMALL, "Apex diameter", "diameter of the apex", "40 mm", "1.5 in");
    private final Field<Optional<Double>> inlet =
        optional(
            "inlet",
            SMALL,
            "default: 0.28 body",
            "Inlet, as a circle",
            "diameter of a circle of the area of the inlet; openings left out are in the"
                + " proportions of Rietema",
            "70 mm",
            "3 in");
    private final Field<Optional<Double>> finder =
        optional(
            "vortexFinder",
            SMALL,
            "default: 0.34 body",
            "Vortex finder",
            "diameter of the vortex finder",
            "85 mm",
            "3.5 in");
    private final Field<Optional<Double>> vortex =
        optional(
            "freeVortex",
            CommonLimits.DEPTH.si(),
            "default: 4.6 body",
            "Free vortex height",
            "height from the vortex finder to the apex",
            "1.1 m",
            "4 ft");
    private final Field<Integer> parallel =
        standard(
            "parallel",
            Type.count(1, 200),
            "1",
            "Cyclones in parallel",
            "how many cyclones work side by side",
            "2");
    private final Field<HydrocycloneModel> model =
        standard(
            "model",
            Type.choice(
                HydrocycloneModels.FAMILY.all(), HydrocycloneModel::id, HydrocycloneModel::name),
            HydrocycloneModels.DEFAULT.id(),
            "Cut and pressure by",
            "the model of cut and pressure that judges; the report shows all");
    private final Field<Double> shear =
        standard(
            "shearRate",
            SHEAR,
            "200 1/s",
            "Shear rate of viscosity",
            "shear rate at which the viscosity of the liquor counts",
            "200 1/s");
    private final Field<Double> pump =
        standard(
            "pumpEfficiency",
            Limits.of(Measure.FRACTION, "10 %", "100 %").si(),
            "50 %",
            "Feed pump efficiency",
            "efficiency of the feed pump with its motor",
            "50 %");
    private final Field<Double> running = running("20 h");

    CycloneFields() {
      super("cyclone", "hydrocyclone");
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(values, List.of(out(values, under), out(values, over)));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      return values.made(
          body,
          () -> {
            HydrocycloneGeometry usual =
                HydrocycloneGeometry.rietema(values.get(body), values.get(apex));
            HydrocycloneGeometry geometry =
                new HydrocycloneGeometry(
                    values.get(body),
                    values.get(inlet).orElse(usual.inletM()),
                    values.get(finder).orElse(usual.overflowM()),
                    values.get(apex),
                    values.get(vortex).orElse(usual.freeVortexM()));
            return List.of(
                new CycloneUnit(
                    values.get(name),
                    values.get(in),
                    values.get(under),
                    values.get(over),
                    values.get(running),
                    new Hydrocyclone(geometry, values.get(parallel)),
                    values.get(model),
                    values.get(shear),
                    values.get(pump)));
          });
    }
  }
}
