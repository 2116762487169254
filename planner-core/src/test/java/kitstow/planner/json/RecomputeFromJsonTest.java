package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import kitstow.planner.planted.SoundPlans;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever has only the JSON can work out every figure of every state from it. */
class RecomputeFromJsonTest {
  private static final double G = 9.80665;
  private static final Offset<Double> ONE_GRAM = within(0.001);
  private static final Offset<Double> TWO_GRAMS = within(0.002);
  private static final Offset<Double> HALF_MM = within(0.5);
  private static final Offset<Double> TENTH_NM = within(0.1);

  /** Small, as large as a trip gets, and two that nobody packed by hand. */
  static List<Named<String>> reports() {
    return List.of(
        Named.of("every key", Reports.everyKeyJson()),
        Named.of("remote fortnight", Reports.shippedJson("remote-fortnight")),
        Named.of("sound plan 1", Reports.json(SoundPlans.of(1L).loading())),
        Named.of("sound plan 2", Reports.json(SoundPlans.of(2L).loading())));
  }

  @ParameterizedTest
  @MethodSource("reports")
  void totalsAxleLoadsCentreAndMomentFollowFromBodiesMassesAndShifts(String text) {
    JsonObject report = JsonParser.parseString(text).getAsJsonObject();
    double rearAxle = report.getAsJsonObject("frame").get("rearAxleXMm").getAsDouble();

    assertThat(report.getAsJsonArray("states")).hasSizeGreaterThan(3);
    for (JsonElement element : report.getAsJsonArray("states")) {
      JsonObject state = element.getAsJsonObject();
      double total = 0.0;
      double[] moment = new double[3];
      double overhang = 0.0;
      for (JsonElement one : report.getAsJsonArray("bodies")) {
        JsonObject body = one.getAsJsonObject();
        double mass = state.getAsJsonObject("massKg").get(key(body)).getAsDouble();
        total += mass;
        for (int axis = 0; axis < 3; axis++) {
          moment[axis] +=
              mass * (end("minMm", axis, body, state) + end("maxMm", axis, body, state));
        }
        if (body.get("inOverhang").getAsBoolean()) {
          double front = end("minMm", 0, body, state) - rearAxle;
          double rear = end("maxMm", 0, body, state) - rearAxle;
          overhang += mass * meanBehind(front, rear) / 1000.0 * G;
        }
      }
      double rearLoad = moment[0] / 2.0 / rearAxle;

      assertThat(total).as("total").isCloseTo(number(state, "totalKg"), ONE_GRAM);
      assertThat(rearLoad).as("rear").isCloseTo(number(state, "rearAxleKg"), TWO_GRAMS);
      assertThat(total - rearLoad).as("front").isCloseTo(number(state, "frontAxleKg"), TWO_GRAMS);
      assertThat(overhang).as("moment").isCloseTo(number(state, "overhangMomentNm"), TENTH_NM);
      JsonObject centre = state.getAsJsonObject("centreOfMassMm");
      for (int axis = 0; axis < 3; axis++) {
        assertThat(moment[axis] / 2.0 / total)
            .isCloseTo(number(centre, "xyz".substring(axis, axis + 1)), HALF_MM);
      }
    }
  }

  /** Mean of max(0, x) from one end of a body to the other. */
  private static double meanBehind(double front, double rear) {
    if (rear <= 0.0) {
      return 0.0;
    }
    return front >= 0.0 ? (front + rear) / 2.0 : rear * rear / 2.0 / (rear - front);
  }

  private static double end(String corner, int axis, JsonObject body, JsonObject state) {
    String name = "xyz".substring(axis, axis + 1);
    JsonObject shifts = state.getAsJsonObject("shiftMm");
    double shift = shifts.has(key(body)) ? number(shifts.getAsJsonObject(key(body)), name) : 0.0;
    return number(body.getAsJsonObject(corner), name) + shift;
  }

  private static String key(JsonObject body) {
    String id = body.get("id").getAsString();
    return body.get("unit").isJsonNull() ? id : id + "#" + body.get("unit").getAsInt();
  }

  private static double number(JsonObject object, String name) {
    return object.get(name).getAsDouble();
  }

  @Test
  void everySupportIsABodyOrTheUteAndSharesAddUpToOne() {
    JsonObject report = JsonParser.parseString(Reports.everyKeyJson()).getAsJsonObject();
    JsonObject masses =
        report.getAsJsonArray("states").get(0).getAsJsonObject().getAsJsonObject("massKg");
    for (JsonElement element : report.getAsJsonArray("bodies")) {
      JsonArray on = element.getAsJsonObject().getAsJsonArray("on");
      double sum = 0.0;
      for (JsonElement share : on) {
        sum += number(share.getAsJsonObject(), "share");
        String key = share.getAsJsonObject().get("bodyKey").getAsString();
        assertThat(key.equals("ute") || masses.has(key)).as(key).isTrue();
      }
      assertThat(on.isEmpty() ? 1.0 : sum).isCloseTo(1.0, within(1e-5));
    }
  }
}
