/** One box for a hand scanner or for fingers: a plain GET to /find?id=…, works before any script has loaded. */
import styles from './find-box.module.css';

export function FindBox() {
  return (
    <search className={`${styles.find} no-print`}>
      <form action="/find" method="get">
        <label className="vh" htmlFor="find-id">
          Scan or type a tool ID
        </label>
        <input
          id="find-id"
          name="id"
          type="text"
          required
          placeholder="Scan or type a tool ID"
          autoComplete="off"
          autoCapitalize="characters"
          autoCorrect="off"
          spellCheck={false}
          enterKeyHint="go"
        />
        <button type="submit">Find</button>
      </form>
    </search>
  );
}
