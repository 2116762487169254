package kitstow.planner.trip;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/**
 * Axle loads of the bare ute in grams: no fuel, nobody aboard, every removable part off, nothing
 * fitted. They are the measured axle loads less what they were measured with, so that kerb, tare
 * and running order of one ute come to the same.
 *
 * @param frontG load on the front axle
 * @param rearG load on the rear axle
 */
public record EmptyUte(long frontG, long rearG) {

  /**
   * Takes the basis out of the measured axle loads.
   *
   * @throws IllegalArgumentException if the basis names a tank, seat or fitted thing that the
   *     scenario does not have
   */
  public static EmptyUte of(Scenario scenario) {
    AxleSum bare = bare(scenario);
    return new EmptyUte(bare.frontG(), bare.rearG());
  }

  /** The same ute in kerb trim; see {@link AxleKerb}. */
  public static AxleKerb kerbOf(Scenario scenario) {
    AxleSum sum = bare(scenario);
    for (Tank tank : scenario.ute().fuelTanks()) {
      sum.add(tank.capacityMl(), tank);
    }
    for (RemovablePart part : scenario.ute().parts()) {
      sum.add(part.mass().massG(), AxleSum.centreXMm(part.box()));
    }
    return new AxleKerb(sum.frontG(), sum.rearG());
  }

  private static AxleSum bare(Scenario scenario) {
    AxleSum sum = AxleSum.measured(scenario.ute());
    takeFuelOut(sum, scenario.ute());
    takePeopleOut(sum, scenario.ute());
    takeFittedOut(sum, scenario);
    return sum;
  }

  private static void takeFuelOut(AxleSum sum, Ute ute) {
    Map<String, Long> fuel = new HashMap<>(ute.empty().fuelMl());
    for (Tank tank : ute.fuelTanks()) {
      Long contentMl = fuel.remove(tank.id());
      if (contentMl != null) {
        sum.add(-contentMl, tank);
      }
    }
    requireNone("tank", fuel.keySet());
  }

  private static void takePeopleOut(AxleSum sum, Ute ute) {
    Map<String, Seat> seats = new HashMap<>();
    for (Seat seat : ute.seats()) {
      seats.put(seat.id(), seat);
    }
    for (EmptyAxleLoads.PersonAboard person : ute.empty().people()) {
      Seat seat = seats.get(person.seatId());
      if (seat == null) {
        throw new IllegalArgumentException("no such seat: " + person.seatId());
      }
      sum.add(-person.massG(), seat.place().xMm());
    }
  }

  private static void takeFittedOut(AxleSum sum, Scenario scenario) {
    Set<String> left = new HashSet<>(scenario.ute().empty().fitted());
    for (RemovablePart part : scenario.ute().parts()) {
      if (left.remove(part.id())) {
        takeOut(sum, part.mass().massG(), part.box());
      }
    }
    for (Accessory accessory : scenario.accessories()) {
      if (left.remove(accessory.id())) {
        takeOut(sum, accessory.mass().massG(), accessory.box());
      }
    }
    if (scenario.tray().isPresent() && left.remove(Rig.TRAY)) {
      Tray tray = scenario.tray().get();
      sum.add(-tray.mass().massG(), tray.frontXMm() + tray.size().lengthMm() / 2.0);
    }
    if (scenario.tray().isPresent() && scenario.canopy().isPresent() && left.remove(Rig.CANOPY)) {
      Canopy canopy = scenario.canopy().get();
      int frontXMm = scenario.tray().get().frontXMm() + canopy.fromTrayFrontMm();
      sum.add(-canopy.mass().massG(), frontXMm + canopy.size().lengthMm() / 2.0);
    }
    requireNone("part, accessory, tray or canopy", left);
  }

  private static void takeOut(AxleSum sum, long massG, BoxMm box) {
    sum.add(-massG, AxleSum.centreXMm(box));
  }

  private static void requireNone(String what, Set<String> unknown) {
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException("weighed with no such " + what + ": " + unknown);
    }
  }
}
