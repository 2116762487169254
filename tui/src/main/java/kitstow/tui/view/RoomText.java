package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.SpaceRoom;

/** What still goes into each space, the largest gap first. */
public final class RoomText {
  private RoomText() {}

  /** A row for each space. */
  public static List<String> lines(
      List<SpaceRoom> rooms, Subjects subjects, StateNames states, Page page) {
    List<SpaceRoom> sorted = new ArrayList<>(rooms);
    sorted.sort(Comparator.comparingLong(RoomText::gapMm3).reversed());
    Table table =
        new Table()
            .rest("Space")
            .figures("Largest gap mm")
            .figures("L free")
            .figures("kg left")
            .figures("10 kg: N·m")
            .figures("tightest")
            .rest("before");
    for (SpaceRoom room : sorted) {
      table.row(
          subjects.space(room.space()),
          room.largestGap().map(RoomText::size).orElse("none"),
          Figures.near(Math.floor(room.freeMl() / 1000.0), 0),
          room.left()
              .map(left -> left.kg() < 0.0 ? "none" : Figures.marginKg(left.kg()))
              .orElse("any"),
          Figures.near(room.tenMore().momentNm(), 0),
          Figures.near(room.tenMore().tightestKg(), 1),
          room.left()
              .map(
                  left -> before(room, left, subjects) + ", state " + states.number(left.stateId()))
              .orElse(""));
    }
    if (table.isEmpty()) {
      return List.of("There is no space.");
    }
    List<String> lines = new ArrayList<>(table.lines(page));
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "Gap: the largest box between what is there, along x across x up; what may carry nothing"
                + " keeps the room above it. L free: all the volume that is left. kg left: what may"
                + " be added in that gap before the first limit is reached, in the worst state. 10 kg:"
                + " what 10 kg more there add to the overhang moment, and to the load on the limit"
                + " that is tightest now."));
    return lines;
  }

  private static String before(SpaceRoom room, SpaceRoom.Left left, Subjects subjects) {
    boolean own = left.rule() == RuleId.SPACE_RATING && left.subjectId().equals(room.space().id());
    return own ? "its rating" : subjects.limit(left.rule(), left.subjectId());
  }

  private static long gapMm3(SpaceRoom room) {
    return room.largestGap()
        .map(box -> (long) box.lengthMm() * box.widthMm() * box.heightMm())
        .orElse(0L);
  }

  private static String size(BoxMm box) {
    return box.lengthMm() + " x " + box.widthMm() + " x " + box.heightMm();
  }
}
