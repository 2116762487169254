package kitstow.planner.json;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Catalogue;
import kitstow.planner.problem.JsonPath;

/**
 * Reads a catalogue from one file or several. Masses become whole grams, lengths whole millimetres.
 *
 * <p>Tolerances and moving ratings that a file does not give are set from the default settings. A
 * scenario with other settings sets them anew when it takes an entry; a figure that equals its
 * default counts as not given there.
 */
public final class CatalogueReader {
  private CatalogueReader() {}

  /**
   * Reads files that form one catalogue; an id may be used once only among all of them.
   *
   * @return the catalogue, or every fault of every file; the paths of faults begin with the file's
   *     name
   */
  public static Outcome<Catalogue> read(List<NamedText> files) {
    Faults faults = new Faults();
    Shelves shelves = new Shelves(Figures.DEFAULTS, faults);
    for (NamedText file : files) {
      JsonPath root = JsonPath.rootOf(file.name());
      Optional<Fields> fields = Document.open(file.text(), root, "catalogue", faults);
      if (fields.isPresent()) {
        fields.get().text("title", "name it as it shall be shown");
        shelves.read(fields.get());
      }
      faults.nextFile();
    }
    return faults.outcome(shelves.catalogue());
  }
}
