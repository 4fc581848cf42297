//! Small linear systems, solved in place.

use super::MAX_NODES;

/// A square matrix of which the first `n` rows and columns count.
pub(super) type Matrix = [[f64; MAX_NODES]; MAX_NODES];

/// Solves `a x = b` for each right-hand side; the answers replace them.
///
/// No pivoting: the matrices are M-matrices or nearly so. A network is sparse, so rows with
/// nothing under the pivot are passed over.
pub(super) fn solve<const R: usize>(n: usize, a: &mut Matrix, b: &mut [[f64; MAX_NODES]; R]) {
    for k in 0..n {
        let (upper, lower) = a.split_at_mut(k + 1);
        let pivot = &upper[k];
        let per_pivot = 1.0 / pivot[k];
        for (row, i) in lower.iter_mut().zip(k + 1..n) {
            if row[k] == 0.0 {
                continue;
            }
            let factor = row[k] * per_pivot;
            for (entry, over) in row[k + 1..n].iter_mut().zip(&pivot[k + 1..n]) {
                *entry -= factor * over;
            }
            for side in b.iter_mut() {
                side[i] -= factor * side[k];
            }
        }
    }
    for side in b.iter_mut() {
        for k in (0..n).rev() {
            let mut rest = side[k];
            for j in k + 1..n {
                rest -= a[k][j] * side[j];
            }
            side[k] = rest / a[k][k];
        }
    }
}
