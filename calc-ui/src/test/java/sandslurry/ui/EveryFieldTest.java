package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.design.DesignFields;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Part;
import sandslurry.fact.Type;

/** The form has every field of a design. */
class EveryFieldTest {
  /** Liquids of a state, which are as that of the design. */
  private static final List<String> CARRIERS =
      List.of("thinnestCarrier", "thickestCarrier", "coldestCarrier", "warmestCarrier");

  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  /** Fields by an address at which each may stand, with a text that it may hold. */
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** The same for those that choose, which may bring other fields and take them away. */
  private final Map<String, String> choices = new LinkedHashMap<>();

  EveryFieldTest() {
    collect("", DesignFields.DESIGN);
    texts.put("/lines/0/states/coldestCarrier/density", "1012 kg/m3");
    texts.remove("/formatVersion");
    // The box of the standard stands for the whole pipe.
    choices.keySet().removeIf(address -> address.endsWith("/pipe/system"));
  }

  private void collect(String at, Part<?> part) {
    if (part instanceof Kinds<?> kinds) {
      choices.put(at + "/kind", kinds.all().get(1).name());
      for (int i = 0; i < kinds.all().size(); i++) {
        String place = at.endsWith("/units/0") ? at.replaceFirst("0$", String.valueOf(i)) : at;
        collect(place, kinds.all().get(i));
      }
      return;
    }
    for (Field<?> field : ((Fields<?>) part).all()) {
      String place = at + "/" + field.name();
      if (field.content() instanceof Part<?> inner) {
        if (!CARRIERS.contains(field.name())) {
          collect(place, inner);
        }
      } else if (field.content() instanceof Listed<?> list) {
        collect(place + "/0", list.entry());
      } else if (field.content() instanceof Type<?> type && !type.choices().isEmpty()) {
        choices.putIfAbsent(place, List.copyOf(type.choices().keySet()).get(1));
      } else {
        texts.put(place, field.examples().isEmpty() ? "a text" : field.examples().get(0));
      }
    }
  }

  /** Designs that between them have every choice that brings fields with it. */
  private static List<DesignDocument> designs() {
    DesignDocument line =
        Designs.everything()
            .insert("/lines/0/pump/others", 1, "{\"curve\": [{}, {}, {}]}")
            .withPart("/plant", "{\"pens\": [{}], \"modes\": [{}, {}], \"units\": []}");
    String[] kinds = {
      "box", "lane", "cyclone", "screen", "fibreSeparator", "splitter", "pit", "storage"
    };
    for (int i = 0; i < kinds.length; i++) {
      line =
          line.insert("/plant/units", i, "{\"kind\": \"" + kinds[i] + "\"}")
              .with("/lines/0/dilution/mostRatio", "5");
    }
    List<DesignDocument> designs = new ArrayList<>(List.of(line));
    designs.add(line.without("/sand/gradation").with("/sand/d50", "1 mm"));
    designs.add(line.withPart("/lines/0/pump", "{\"kind\": \"piston\", \"cylinders\": \"2\"}"));
    designs.add(line.withPart("/lines/0/route/runs/0", "{\"bore\": \"4 in\"}"));
    designs.add(line.withPart("/lines/0/suction", "{\"bore\": \"4 in\"}"));
    designs.add(line.withPart("/lines/0/mixture", "{\"massFraction\": \"3 %\"}"));
    designs.add(line.withPart("/lines/0/mixture", "{\"sandRate\": \"1 kg/s\"}"));
    designs.add(line.withPart("/lines/0/mixture", "{\"stream\": \"diluted\"}"));
    designs.add(line.withPart("/lines/0/states", "{\"coldestCarrier\": {\"kind\": \"measured\"}}"));
    for (String kind : List.of("manure", "measured", "readings")) {
      designs.add(line.withPart("/carrier", "{\"kind\": \"" + kind + "\"}"));
    }
    for (String law : List.of("Newtonian", "power law", "Bingham", "Herschel-Bulkley")) {
      designs.add(line.withPart("/carrier", "{\"kind\": \"rheology\", \"law\": \"" + law + "\"}"));
    }
    return designs;
  }

  @Test
  void everyFieldIsOnTheFormAndCanBeReachedFromAProblem() throws Exception {
    Map<String, String> missing = new LinkedHashMap<>(choices);
    missing.putAll(texts);
    assertThat(missing).hasSizeGreaterThan(200);
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          InputsPanel inputs = new InputsPanel(model);
          for (DesignDocument design : designs()) {
            // All texts at once, then one by one what these hide from each other.
            DesignDocument filled = design;
            for (Map.Entry<String, String> text : texts.entrySet()) {
              filled = filled.with(text.getKey(), text.getValue());
            }
            model.startFrom(filled);
            missing.entrySet().removeIf(field -> isReached(inputs, field));
            missing
                .entrySet()
                .removeIf(
                    field -> {
                      model.startFrom(design.with(field.getKey(), field.getValue()));
                      return isReached(inputs, field);
                    });
          }
          return null;
        });
    assertThat(missing).isEmpty();
  }

  private static boolean isReached(InputsPanel inputs, Map.Entry<String, String> field) {
    return inputs.focus(field.getKey()) && shows(inputs, field.getKey(), field.getValue());
  }

  private static boolean shows(InputsPanel inputs, String pointer, String text) {
    for (JComponent component : PanelsTest.all(inputs.component())) {
      if (!PanelsTest.isShown(component)) {
        continue;
      }
      if (component instanceof JTextField field && pointer.equals(field.getName())) {
        return field.getText().equals(text);
      }
      if (component instanceof JComboBox<?> box && pointer.equals(box.getName())) {
        return ((Choice) box.getSelectedItem()).value().equals(text);
      }
      if (component instanceof JTable table
          && table.getName() != null
          && pointer.startsWith(table.getName() + "/")) {
        return isIn(table, text);
      }
    }
    return false;
  }

  private static boolean isIn(JTable table, String text) {
    for (int row = 0; row < table.getRowCount(); row++) {
      for (int column = 0; column < table.getColumnCount(); column++) {
        if (table.getValueAt(row, column).equals(text)) {
          return true;
        }
      }
    }
    return false;
  }
}
