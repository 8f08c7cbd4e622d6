"""Runs a program at a terminal of its own: at-terminal.py <folder> <json list of keys> <program> <words>...

Each entry of the list is typed when the one before has been answered with silence. What the terminal showed goes to
standard output; the exit code is the program's.
"""
import fcntl, json, os, pty, select, struct, sys, termios, time

folder, keys, *words = sys.argv[1:]
child, terminal = pty.fork()
if child == 0:
    os.chdir(folder)
    os.environ["TERM"] = "xterm"
    os.execvp(words[0], words)
fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 100, 0, 0))


def listen(quiet, longest):
    """Passes on what is shown until it is quiet for a while; False when the program is over."""
    shown = False
    end = time.time() + longest
    while time.time() < end:
        ready, _, _ = select.select([terminal], [], [], quiet if shown else end - time.time())
        if not ready:
            return True
        try:
            some = os.read(terminal, 65536)
        except OSError:
            return False
        if not some:
            return False
        shown = True
        sys.stdout.buffer.write(some)
    return True


alive = listen(0.5, 20)
for key in json.loads(keys):
    if not alive:
        break
    os.write(terminal, key.encode())
    alive = listen(0.3, 20)
while alive:
    alive = listen(1, 60)
sys.stdout.flush()
_, status = os.waitpid(child, 0)
sys.exit(os.waitstatus_to_exitcode(status))
