package sandslurry.separation.cyclone;

import java.util.List;

/** The catalogue of hydrocyclone models and of rules for the cut size. */
public final class HydrocycloneModels {
  /** The model used unless another is asked for: it knows viscosity and every dimension. */
  public static final HydrocycloneModel DEFAULT = new FlintoffPlittTurak1987();

  private static final List<HydrocycloneModel> ALL =
      List.of(DEFAULT, new MedronhoSvarovsky1984(), new Plitt1976());

  private HydrocycloneModels() {}

  /**
   * Every model of the family.
   *
   * @return the models, the default first
   */
  public static List<HydrocycloneModel> all() {
    return ALL;
  }

  /**
   * Every rule that gives only a cut size.
   *
   * @return the rules
   */
  public static List<CutSizeModel> rules() {
    return List.of(new Arterburn1982(), new Bradley1965());
  }

  /**
   * The model of a key.
   *
   * @param id a key as in files
   * @return the model
   * @throws IllegalArgumentException if no model has that key
   */
  public static HydrocycloneModel byId(String id) {
    return all().stream()
        .filter(model -> model.id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("there is no hydrocyclone model \"" + id + "\""));
  }
}
