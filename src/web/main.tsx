import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { Bench } from './frame/Bench.tsx'
import { applyLook } from './frame/look.ts'
import './looks/index.css'

applyLook()
const place = document.getElementById('bench')
if (place === null) throw new Error('the page has no place for the bench')
createRoot(place).render(
  <StrictMode>
    <Bench />
  </StrictMode>,
)
