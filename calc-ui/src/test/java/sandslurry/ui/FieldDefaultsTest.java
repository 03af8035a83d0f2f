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
    DesignDocument start = Designs.everything();
    List<JTextField> fields = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          model.startFrom(start);
          PanelsTest.all(new InputsPanel(model).component()).stream()
              .filter(JTextField.class::isInstance)
              .map(JTextField.class::cast)
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
        assertThat(with.read().design()).as(field.getName()).isEqualTo(without.read().design());
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(14);
  }
}
