package sandslurry.fuzz;

import java.nio.charset.StandardCharsets;
import javax.measure.Quantity;
import sandslurry.units.Measure;
import sandslurry.units.UnitTextException;

/** Types any text where a quantity is wanted: it is refused in words, or is a number. */
public final class QuantityFuzz {
  private QuantityFuzz() {}

  /**
   * One try.
   *
   * @param data what is typed
   */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = new String(data, StandardCharsets.UTF_8);
    ReaderFuzz.timed(() -> Measure.all().forEach(measure -> parse(measure, text)));
  }

  private static <Q extends Quantity<Q>> void parse(Measure<Q> measure, String text) {
    Quantity<Q> quantity;
    try {
      quantity = measure.parse(text);
    } catch (UnitTextException e) {
      ReaderFuzz.check(e.getMessage().length() < 1_600, "a long refusal");
      return;
    }
    double si = measure.si(quantity);
    double number = quantity.getValue().doubleValue();
    ReaderFuzz.check(Double.isFinite(number), "no number: " + text);
    if (Double.isFinite(si)) {
      double again = measure.si(measure.parse(measure.write(quantity)));
      ReaderFuzz.check(again == si, measure + " " + text + " reads back as " + again);
    }
  }
}
