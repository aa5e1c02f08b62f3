//! Work shared out among the computer's threads.

use std::sync::atomic::{AtomicUsize, Ordering};

/// Does `work` for every number below `count`, on as many threads as the computer runs at once.
pub(crate) fn share_out(count: usize, work: &(dyn Fn(usize) + Sync)) {
    let threads = std::thread::available_parallelism().map_or(1, std::num::NonZero::get).min(count);
    let next = AtomicUsize::new(0);
    let all = || {
        loop {
            let i = next.fetch_add(1, Ordering::Relaxed);
            if i >= count {
                break;
            }
            work(i);
        }
    };
    std::thread::scope(|scope| {
        for _ in 1..threads {
            scope.spawn(all);
        }
        all();
    });
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use std::sync::Mutex;

    #[test]
    fn every_number_is_done_once() {
        for count in [0, 1, 2, 7, 100] {
            let done = Mutex::new(Vec::new());
            share_out(count, &|i| done.lock().unwrap().push(i));
            let mut done = done.into_inner().unwrap();
            done.sort_unstable();
            assert_eq!(done, (0..count).collect::<Vec<_>>());
        }
    }
}
