package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * A terminal that exists in memory only. Its parent holds its lock while it waits for a key, so
 * that nobody could draw meanwhile; this one does not.
 */
class MemoryTerminal extends DefaultVirtualTerminal {
  private final BlockingQueue<KeyStroke> keys = new LinkedBlockingQueue<>();

  MemoryTerminal(TerminalSize size) {
    super(size);
  }

  @Override
  public void addInput(KeyStroke stroke) {
    keys.add(stroke);
  }

  @Override
  @SuppressWarnings("UnsynchronizedOverridesSynchronized") // see above
  public KeyStroke readInput() {
    try {
      return keys.take();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new KeyStroke(KeyType.EOF);
    }
  }

  @Override
  @SuppressWarnings("UnsynchronizedOverridesSynchronized") // see above
  public KeyStroke pollInput() {
    return keys.poll();
  }
}
