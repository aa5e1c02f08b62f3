//! A free beam on springs with a force in its middle, in closed form (Hetényi, Beams on Elastic Foundation, 1946,
//! finite beams with free ends; from memory, compared with finite differences).

/// A strip of mat on ground that gives in proportion to pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeamOnGround {
    /// Force in the middle, N.
    pub force: f64,
    /// Length, m.
    pub length: f64,
    /// Width on the ground, m.
    pub width: f64,
    /// Flexural stiffness `E·I`, N·m².
    pub stiffness: f64,
    /// Modulus of the ground, Pa per m.
    pub modulus: f64,
}

impl BeamOnGround {
    /// `λ = (k·b/(4·E·I))^¼`, 1/m.
    pub fn lambda(&self) -> f64 {
        libm::pow(self.modulus * self.width / (4.0 * self.stiffness), 0.25)
    }

    /// Settlement under the force (m): `P·λ/(2·k·b)·(cosh λl + cos λl + 2)/(sinh λl + sin λl)`.
    pub fn middle(&self) -> f64 {
        let (l, [sinh, cosh, sin, cos]) = self.functions();
        self.force * l / (2.0 * self.modulus * self.width) * (cosh + cos + 2.0) / (sinh + sin)
    }

    /// Settlement of the ends (m): `2·P·λ/(k·b)·cosh(λl/2)·cos(λl/2)/(sinh λl + sin λl)`; below zero they lift.
    pub fn ends(&self) -> f64 {
        let (l, [sinh, _, sin, _]) = self.functions();
        let half = 0.5 * l * self.length;
        2.0 * self.force * l / (self.modulus * self.width) * libm::cosh(half) * libm::cos(half) / (sinh + sin)
    }

    /// Bending moment under the force (N·m): `P/(4·λ)·(cosh λl − cos λl)/(sinh λl + sin λl)`.
    pub fn moment(&self) -> f64 {
        let (l, [sinh, cosh, sin, cos]) = self.functions();
        self.force / (4.0 * l) * (cosh - cos) / (sinh + sin)
    }

    /// Highest pressure on the ground, under the force, Pa.
    pub fn pressure(&self) -> f64 {
        self.modulus * self.middle()
    }

    /// Length (m) that would press the ground evenly with the highest pressure: what of the beam works.
    pub fn working_length(&self) -> f64 {
        self.force / (self.pressure() * self.width)
    }

    /// `λ`, and sinh, cosh, sin, cos of `λ·l`. Beyond 30 the ends no longer matter, and the functions would overflow.
    fn functions(&self) -> (f64, [f64; 4]) {
        let lambda = self.lambda();
        let x = (lambda * self.length).min(30.0);
        (lambda, [libm::sinh(x), libm::cosh(x), libm::sin(x), libm::cos(x)])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stiff_beam_presses_evenly_and_a_soft_one_works_near_the_force() {
        let stiff = BeamOnGround { force: 100e3, length: 2.0, width: 1.0, stiffness: 1e12, modulus: 2e7 };
        assert!((stiff.pressure() - 50e3).abs() < 1.0 && (stiff.working_length() - 2.0).abs() < 1e-3);
        assert!((stiff.moment() - 100e3 * 2.0 / 8.0).abs() < 1.0, "an even load on two cantilevers");
        let soft = BeamOnGround { length: 20.0, stiffness: 1e5, ..stiff };
        let l = soft.lambda();
        // The endless beam: y = P·λ/(2·k·b), M = P/(4·λ).
        assert!((soft.middle() - 100e3 * l / (2.0 * 2e7)).abs() < 1e-9);
        assert!((soft.moment() - 100e3 / (4.0 * l)).abs() < 1e-3);
        assert!(soft.working_length() < 2.0);
    }
}
