//! Small sparse linear systems, solved in place.
//!
//! A network is a ring with branches. Its kit, which branches off, was added last, so elimination
//! goes from the last node to the first: a branch then fills nothing, and the ring very little.
//! Which entries count is kept as bits, a row each.

use super::MAX_NODES;

/// A square system with `R` right-hand sides.
pub(super) struct System<const R: usize> {
    a: [[f64; MAX_NODES]; MAX_NODES],
    /// Off the diagonal, the columns of each row that may differ from zero; symmetric.
    pattern: [u16; MAX_NODES],
    /// The right-hand sides; after [`System::solve`] the answers.
    pub sides: [[f64; MAX_NODES]; R],
}

const _: () = assert!(MAX_NODES <= 16, "a row's pattern has 16 bits");

/// The places of the bits that are set.
#[inline]
fn places(mut bits: u16) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        let place = bits.trailing_zeros() as usize;
        bits &= bits.wrapping_sub(1);
        (place < MAX_NODES).then_some(place)
    })
}

/// The bits of the places before `k`.
#[inline]
const fn before(k: usize) -> u16 {
    (1 << k) - 1
}

impl<const R: usize> System<R> {
    /// `I x = sides`.
    #[inline]
    pub fn identity(sides: [[f64; MAX_NODES]; R]) -> Self {
        let mut a = [[0.0; MAX_NODES]; MAX_NODES];
        for (k, row) in a.iter_mut().enumerate() {
            row[k] = 1.0;
        }
        Self {
            a,
            pattern: [0; MAX_NODES],
            sides,
        }
    }

    /// Adds to an entry.
    #[inline]
    pub fn add(&mut self, row: usize, column: usize, value: f64) {
        self.a[row][column] += value;
        if row != column {
            self.pattern[row] |= 1 << column;
            self.pattern[column] |= 1 << row;
        }
    }

    /// Solves for the first `n` unknowns; the answers replace the right-hand sides.
    ///
    /// No pivoting: the matrices are M-matrices or nearly so.
    pub fn solve(&mut self, n: usize) {
        let n = n.min(MAX_NODES);
        let mut per_pivot = [1.0; MAX_NODES];
        for k in (0..n).rev() {
            let (rest, pivot) = self.a.split_at_mut(k);
            let pivot = &pivot[0];
            per_pivot[k] = 1.0 / pivot[k];
            let linked = self.pattern[k] & before(k);
            for i in places(linked) {
                // Kept symmetric even where nothing fills in, as the pivots to come rely on it.
                self.pattern[i] |= linked;
                let row = &mut rest[i];
                let factor = row[k] * per_pivot[k];
                if factor == 0.0 {
                    continue;
                }
                for j in places(linked) {
                    row[j] -= factor * pivot[j];
                }
                for side in &mut self.sides {
                    side[i] -= factor * side[k];
                }
            }
        }
        for side in &mut self.sides {
            for k in 0..n {
                let mut rest = side[k];
                for j in places(self.pattern[k] & before(k)) {
                    rest -= self.a[k][j] * side[j];
                }
                side[k] = rest * per_pivot[k];
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The answer put into the system gives the right-hand side back.
    #[test]
    fn a_ring_with_branches_is_solved() {
        let links = [
            (0, 1),
            (1, 2),
            (2, 3),
            (3, 4),
            (4, 0),
            (3, 5),
            (5, 6),
            (6, 7),
            (5, 0),
        ];
        let n = 8;
        let mut dense = [[0.0; MAX_NODES]; MAX_NODES];
        let sides = [std::array::from_fn(|i| 1.0 + i as f64)];
        let mut system = System::identity(sides);
        for (i, row) in dense.iter_mut().enumerate() {
            row[i] = 1.0;
        }
        for (step, (a, b)) in links.into_iter().enumerate() {
            let (there, back) = (0.3 + 0.1 * step as f64, 2.0 - 0.2 * step as f64);
            for (row, column, value) in [(a, a, there), (b, a, -there), (b, b, back), (a, b, -back)]
            {
                system.add(row, column, value);
                dense[row][column] += value;
            }
        }
        system.solve(n);
        for (row, wanted) in dense.iter().zip(sides[0]).take(n) {
            let got: f64 = row
                .iter()
                .zip(system.sides[0])
                .take(n)
                .map(|(a, x)| a * x)
                .sum();
            assert!((got - wanted).abs() < 1e-12, "{got} for {wanted}");
        }
    }

    /// A stream round a ring, as an upwind scheme has it: half of the pattern is zeros.
    #[test]
    fn a_ring_that_flows_one_way_keeps_its_amounts() {
        let links = [
            (0, 1),
            (1, 2),
            (2, 3),
            (3, 4),
            (4, 5),
            (5, 0),
            (2, 6),
            (6, 4),
        ];
        let before: [f64; MAX_NODES] = std::array::from_fn(|i| if i < 7 { 1.0 } else { 0.0 });
        let mut system = System::identity([before]);
        for (place, (donor, receiver)) in links.into_iter().enumerate() {
            let moved = 0.2 + 0.1 * place as f64;
            system.add(donor, donor, moved);
            system.add(receiver, donor, -moved);
        }
        system.solve(7);
        let after: f64 = system.sides[0].iter().sum();
        assert!((after - 7.0).abs() < 1e-12, "{after} of 7");
        assert!(system.sides[0].iter().all(|amount| *amount >= 0.0));
    }

    /// One way only: nothing comes back.
    #[test]
    fn what_flows_one_way_is_solved_exactly() {
        let mut system = System::identity([[1.0; MAX_NODES], [0.0; MAX_NODES]]);
        system.add(0, 0, 1.0);
        system.add(1, 0, -1.0);
        system.solve(2);
        assert_eq!(system.sides[0][..2], [0.5, 1.5]);
        assert_eq!(system.sides[1][..2], [0.0, 0.0]);
    }
}
