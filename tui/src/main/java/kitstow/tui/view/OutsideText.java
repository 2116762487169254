package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;
import kitstow.planner.statics.OverallSize;

/** How long and high everything is, for whoever drives onto a ferry or into a garage. */
final class OutsideText {
  private OutsideText() {}

  static List<String> lines(Loading loading, Page page) {
    StringBuilder text =
        new StringBuilder("Outside, closed: ").append(of(OverallSize.alone(loading)));
    for (Trailer trailer : loading.scenario().trailers()) {
      text.append(" With ")
          .append(trailer.title())
          .append(": ")
          .append(of(OverallSize.with(loading, trailer)));
    }
    return new ArrayList<>(page.paragraph("", text.toString()));
  }

  private static String of(OverallSize size) {
    String length =
        size.lengthMm().isPresent()
            ? Figures.near(size.lengthMm().getAsInt(), 0)
                + " mm long, farthest back "
                + size.rearmost().title()
            : "length not known";
    String height =
        size.heightMm().isPresent()
            ? Figures.near(size.heightMm().getAsInt(), 0)
                + " mm high, highest "
                + size.highest().title()
            : "height not known";
    return length + "; " + height + ".";
  }
}
