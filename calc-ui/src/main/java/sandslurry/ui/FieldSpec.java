package sandslurry.ui;

import java.util.List;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;

/**
 * What the form says of one text field.
 *
 * @param label its label, in the words of the trade
 * @param field its name in the file
 * @param empty what an empty field means, shown in it
 * @param examples texts that would be right, one in metric units first
 * @param help what it is and what may be typed
 */
record FieldSpec(String label, String field, String empty, List<String> examples, String help) {
  private static final String SUCH_AS = "such as ";

  static FieldSpec of(Field<?> field) {
    boolean asks = field.isNeeded() && !field.examples().isEmpty();
    return new FieldSpec(
        field.label(),
        field.name(),
        asks ? SUCH_AS + field.examples().get(0) : field.absent(),
        field.examples(),
        field.help());
  }

  /** One end of the range of a value. */
  FieldSpec end(String name) {
    return new FieldSpec(label + ", " + name, name, name, examples, help);
  }

  /** What an empty field shows, in the units of the design where it shows an example. */
  String placeholder(DesignDocument document) {
    boolean us = document.text("/units").equalsIgnoreCase("US");
    return empty.startsWith(SUCH_AS) ? SUCH_AS + examples.get(us ? examples.size() - 1 : 0) : empty;
  }
}
