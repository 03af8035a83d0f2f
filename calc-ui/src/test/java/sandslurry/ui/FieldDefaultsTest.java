package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import sandslurry.design.DesignDocument;

class FieldDefaultsTest {
  @Test
  void everyDefaultShownInAnEmptyFieldIsTheOneThatCounts() throws Exception {
    DesignDocument start =
        Designs.everything()
            .with("/carrier/kind", "manure")
            .with("/carrier/totalSolids", "3 %")
            .with("/dilution/mostRatio", "5");
    List<JTextField> fields = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          model.startFrom(start);
          PanelsTest.all(new InputsPanel(model).component()).stream()
              .filter(JTextField.class::isInstance)
              .map(JTextField.class::cast)
              .filter(JTextField::isVisible)
              .forEach(fields::add);
        });
    int checked = 0;
    for (JTextField field : fields) {
      Object empty = field.getClientProperty("JTextField.placeholderText");
      if (!(empty instanceof String text) || !text.startsWith("default ")) {
        continue;
      }
      String standard = text.substring("default ".length());
      DesignDocument without = start.without(field.getName());
      DesignDocument with = without.with(field.getName(), standard);
      if (without.read().design().isPresent()) {
        assertThat(words(with)).as(field.getName()).isEqualTo(words(without));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(14);
  }

  /** The design in words; a gradation, which is the same in all, shows only its address. */
  private static String words(DesignDocument document) {
    return document.read().design().orElseThrow().toString().replaceAll("@[0-9a-f]+", "");
  }
}
