package sandslurry.library;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * The head of a line at a flow rate.
 *
 * @param total head that the line asks of a pump, in metres of slurry, friction and lift together
 * @param byModel friction gradient of its first run by every model, the default first, in metres of
 *     liquid per metre of pipe
 */
public record HeadLoss(Quantity<Length> total, List<ByAuthor<Dimensionless>> byModel) {
  /** Copies the list. */
  public HeadLoss {
    byModel = List.copyOf(byModel);
  }
}
