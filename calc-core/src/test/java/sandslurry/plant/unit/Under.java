package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.plant.Range;
import sandslurry.plant.network.Unit;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.capture.Outlook;

/** Conditions for units that tests build. */
public final class Under {
  private Under() {}

  /** The expected case with a liquor, a liter of clean water a second for any rinse. */
  public static Conditions liquor(LiquorModel liquor) {
    return new Conditions(
        liquor,
        OrganicMatter.FEEDLOT,
        0.4,
        Outlook.LIKELY,
        Range::base,
        1,
        Optional.empty(),
        stream -> 1,
        (stream, flow) -> flow,
        false);
  }

  /** A box that is not rinsed. */
  public static Unit box(
      String name,
      List<String> in,
      String sand,
      String overflow,
      DilutionBox box,
      LiquorModel liquor,
      double shearRatePs) {
    return new BoxUnit(
            new Separator.Place(name, in, sand, overflow, 1),
            box,
            Optional.empty(),
            Range.of(box.rinseEfficiency()),
            shearRatePs)
        .built(liquor(liquor));
  }
}
