package sandslurry.library;

import javax.measure.Quantity;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/**
 * A design built in code. It is the design file being written: every part becomes its fields, with
 * the same defaults and limits, and is checked as a whole when it is read. Immutable.
 */
public final class DesignDraft {
  private final DesignDocument document;

  private DesignDraft(DesignDocument document) {
    this.document = document;
  }

  /**
   * An empty design.
   *
   * @param title the heading of its report
   * @return the design
   */
  public static DesignDraft titled(String title) {
    return new DesignDraft(DesignDocument.empty().with("/title", title));
  }

  /**
   * Gives the sand, the liquid and how much sand it brings.
   *
   * @param mixture the mixture
   * @return the design with it
   */
  public DesignDraft mixture(Mixture mixture) {
    return mixture.in(this);
  }

  /**
   * Gives the line, with what it carries.
   *
   * @param line the line
   * @return the design with it
   */
  public DesignDraft line(Line line) {
    return line.in(this);
  }

  /**
   * Gives the flow rates between which the line runs.
   *
   * @param minimum minimum flow rate
   * @param design design flow rate
   * @param maximum maximum flow rate
   * @return the design with them
   */
  public DesignDraft flowRates(
      Quantity<VolumetricFlowRate> minimum,
      Quantity<VolumetricFlowRate> design,
      Quantity<VolumetricFlowRate> maximum) {
    return with("/lines/0/flow/minimum", Measure.FLOW, minimum)
        .with("/lines/0/flow/design", Measure.FLOW, design)
        .with("/lines/0/flow/maximum", Measure.FLOW, maximum);
  }

  /**
   * Gives the pump of the line.
   *
   * @param pump the pump
   * @return the design with it
   */
  public DesignDraft pump(Pump pump) {
    return pump.in(this);
  }

  /**
   * Gives a settling lane.
   *
   * @param lane the lane
   * @return the design with it
   */
  public DesignDraft lane(Lane lane) {
    return lane.in(this);
  }

  /**
   * Gives any other field of the design file.
   *
   * @param pointer the field, such as {@code /suction/altitude}
   * @param measure what it is
   * @param quantity its value
   * @param <Q> what it is
   * @return the design with it
   */
  public <Q extends Quantity<Q>> DesignDraft with(
      String pointer, Measure<Q> measure, Quantity<Q> quantity) {
    return with(pointer, measure.write(quantity));
  }

  /**
   * Gives any other field of the design file.
   *
   * @param pointer the field, such as {@code /states/powerCut}
   * @param text its value as in a file
   * @return the design with it
   */
  public DesignDraft with(String pointer, String text) {
    return new DesignDraft(document.with(pointer, text));
  }

  /**
   * The design file.
   *
   * @return the document, to be saved or read
   */
  public DesignDocument document() {
    return document;
  }

  /**
   * Checks the whole design.
   *
   * @return the design
   * @throws DesignProblems if anything is missing or outside its limits; it names all of it
   */
  public Design design() {
    Reading reading = document.read();
    return reading.design().orElseThrow(() -> new DesignProblems(reading.problems()));
  }

  /**
   * Checks and evaluates the design.
   *
   * @return verdict, results, findings and working
   * @throws DesignProblems if anything is missing or outside its limits; it names all of it
   */
  public Assessment assess() {
    return Evaluation.assess(design());
  }

  /** This with a part of another draft in place of its own. */
  DesignDraft part(String pointer, DesignDraft from) {
    return from.document.has(pointer)
        ? new DesignDraft(document.withPart(pointer, from.document.json(pointer)))
        : this;
  }

  int size(String pointer) {
    return document.size(pointer);
  }
}
