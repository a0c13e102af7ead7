export const NOTE = "Diese Übersetzung wurde noch von keinem deutschen Sattler gelesen.";
