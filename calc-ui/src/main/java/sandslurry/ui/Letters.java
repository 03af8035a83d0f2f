package sandslurry.ui;

import java.awt.Component;
import java.awt.Container;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JLabel;

/**
 * Gives every label, box and button of the part of the form that has the focus a letter to go to it
 * by. The other parts have none meanwhile: there are more fields than letters.
 */
final class Letters {
  /** The letters of the menus and of the tool bar. */
  static final String TAKEN = "EFGHNOPRSU";

  private Container part;

  /** Moves the letters to another part. */
  void moveTo(Container next) {
    if (next != part) {
      if (part != null) {
        give(part, null);
      }
      part = next;
    }
    if (part != null) {
      Set<Integer> taken = new HashSet<>();
      TAKEN.chars().forEach(taken::add);
      give(part, taken);
    }
  }

  private static void give(Container container, Set<Integer> taken) {
    for (Component child : container.getComponents()) {
      if (taken != null && !child.isVisible()) {
        continue;
      }
      if (child instanceof JLabel label && label.getLabelFor() != null) {
        label.setDisplayedMnemonic(taken == null ? 0 : letter(label.getText(), taken));
      } else if (child instanceof AbstractButton button && button.getText() != null) {
        button.setMnemonic(taken == null ? 0 : letter(button.getText(), taken));
      }
      if (child instanceof Container inner) {
        give(inner, taken);
      }
    }
  }

  /** The first letter of a text that is free; 0 when there is none. */
  private static int letter(String text, Set<Integer> taken) {
    return text.toUpperCase(Locale.ROOT)
        .chars()
        .filter(c -> c >= 'A' && c <= 'Z')
        .filter(taken::add)
        .findFirst()
        .orElse(0);
  }
}
