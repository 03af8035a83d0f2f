package sandslurry.plant.unit;

import java.util.List;
import sandslurry.fact.Kinds;

/** A unit of a plant. Values are in SI, as the kernels that it describes take them. */
public sealed interface PlantUnit
    permits BoxUnit, LaneUnit, CycloneUnit, CakeUnit, SplitterUnit, PitUnit, StorageUnit {
  /**
   * What the unit is called.
   *
   * @return its name
   */
  String name();

  /**
   * The streams in.
   *
   * @return their names
   */
  List<String> inlets();

  /**
   * The streams out.
   *
   * @return their names, solids first
   */
  List<String> outlets();

  /**
   * The streams of liquor out that run by gravity, unless a line pumps them: no sand that is raked
   * or dug out, no cake.
   *
   * @return their names
   */
  List<String> byGravity();

  /**
   * The streams out that are pumped.
   *
   * @return their names
   */
  default List<String> pumped() {
    return List.of();
  }

  /**
   * Whether what flows in is pumped through it.
   *
   * @return true of a hydrocyclone
   */
  default boolean fedByPump() {
    return false;
  }

  /**
   * The kind, as in files.
   *
   * @return for example "box"
   */
  String kind();

  /**
   * All kinds of unit that a plant is built of, by their fields.
   *
   * @return the kinds; a storage that gives liquor back is read as two units
   */
  static Kinds<List<PlantUnit>> kinds() {
    return new Kinds<>(
        "Kind",
        "the kind of unit",
        new UnitFields.CommonFields(),
        List.of(
            new BoxUnit.BoxFields(),
            new LaneUnit.LaneUnitFields(),
            new CycloneUnit.CycloneFields(),
            new CakeUnit.CakeFields("screen", "coarse screen", "2 %", "0 %", "20 %"),
            new CakeUnit.CakeFields("fibreSeparator", "fibre separator", "50 %", "10 %", "26 %"),
            new SplitterUnit.SplitterFields(),
            new PitUnit.PitFields(),
            new StorageUnit.StorageFields()));
  }
}
