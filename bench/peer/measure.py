"""Runs a program, and tells what it took: python3 measure.py OUTPUT PROGRAM [ARGUMENTS…]

What the program prints goes to the file OUTPUT. The answer is a line of JSON: exit code, seconds by the clock, seconds of
processor time, and the largest resident memory in bytes, all of them of the whole process and as the kernel counts them.
"""

import json
import os
import sys
import time

output = os.open(sys.argv[1], os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
started = time.perf_counter()
pid = os.posix_spawnp(sys.argv[2], sys.argv[2:], os.environ, file_actions=[(os.POSIX_SPAWN_DUP2, output, 1)])
_, status, usage = os.wait4(pid, 0)
seconds = time.perf_counter() - started
kilobyte = 1 if sys.platform == "darwin" else 1024
print(
    json.dumps(
        {
            "code": os.waitstatus_to_exitcode(status),
            "seconds": seconds,
            "processor": usage.ru_utime + usage.ru_stime,
            "peak": usage.ru_maxrss * kilobyte,
        }
    )
)
