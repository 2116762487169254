package kitstow.planner.statics;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/** Where a body's ends and centre are in a state, vehicle frame. */
final class Bodies {
  private Bodies() {}

  static long minXMm(Loading loading, LoadState state, int body) {
    return (long) loading.bodies().get(body).box().minXMm() + state.shift(body).xMm();
  }

  static long maxXMm(Loading loading, LoadState state, int body) {
    return (long) loading.bodies().get(body).box().maxXMm() + state.shift(body).xMm();
  }

  static long doubledCentreXMm(Loading loading, LoadState state, int body) {
    return minXMm(loading, state, body) + maxXMm(loading, state, body);
  }

  static long doubledCentreYMm(Loading loading, LoadState state, int body) {
    BoxMm box = loading.bodies().get(body).box();
    return (long) box.minYMm() + box.maxYMm() + 2L * state.shift(body).yMm();
  }

  static double centreZMm(Loading loading, LoadState state, int body) {
    BoxMm box = loading.bodies().get(body).box();
    return (box.minZMm() + box.maxZMm()) / 2.0 + state.shift(body).zMm();
  }
}
